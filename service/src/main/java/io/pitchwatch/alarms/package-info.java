/** Alarms as the standards have them, and what they say to people. */
package io.pitchwatch.alarms;
