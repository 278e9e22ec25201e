/** What must survive a power cut. */
package io.pitchwatch.store;
