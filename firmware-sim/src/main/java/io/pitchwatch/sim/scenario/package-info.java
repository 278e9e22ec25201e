/** Reads scenario files and recordings, and drives the world and its chips by them. */
package io.pitchwatch.sim.scenario;
