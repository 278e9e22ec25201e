/** The stay at one site as a state machine, and the report of all that is known. */
package io.pitchwatch.visit;
