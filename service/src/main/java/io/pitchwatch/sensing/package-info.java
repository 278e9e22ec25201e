/** Accelerometers as registers: drivers on a small bus port, and the loop that samples them. */
package io.pitchwatch.sensing;
