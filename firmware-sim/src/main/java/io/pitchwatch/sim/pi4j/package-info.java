/**
 * The simulated buses as an ordinary Pi4J provider; the only package here that imports Pi4J. It is
 * found through Pi4J's plugin loading and keeps still unless the context names a scenario.
 */
package io.pitchwatch.sim.pi4j;
