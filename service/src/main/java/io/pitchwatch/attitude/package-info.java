/** Where up is, seen from the coach: ISO 8855 axes, x forward, y left, z up. */
package io.pitchwatch.attitude;
