package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;

/**
 * One property and what it says.
 *
 * @param node where it belongs
 * @param property which one
 * @param value what it says
 * @param takenAtNanos monotonic time of what it rests on
 */
public record Reading(Node node, Property property, Value value, long takenAtNanos) {}
