/**
 * Accelerometers as register files. Each has two faces: registers, which the bus sees, and the
 * physical world, which its sensing element feels. Neither knows of the other.
 */
package io.pitchwatch.sim.chip;
