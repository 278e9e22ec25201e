/**
 * What must survive a power cut: zeros, what lies under the coach, alarms, history, the site book.
 */
package io.pitchwatch.store;
