/**
 * The coach body, the ground, and what disturbs them: physics in SI units, in the coach's axes (ISO
 * 8855: x forward, y left, z up; roll above 0 right side low, pitch above 0 front low). Everything
 * that happens is a function of the seed and of time, so that it can be asked at any instant.
 */
package io.pitchwatch.sim.world;
