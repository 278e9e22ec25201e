package io.pitchwatch.visit;

import io.pitchwatch.settling.GroundModel;

/**
 * A sensor of the coach.
 *
 * @param id its name
 * @param model what to expect of the ground under it and of its own drift
 */
public record FittedSensor(String id, GroundModel model) {}
