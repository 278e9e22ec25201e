package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;

/**
 * The property on which another one rests: while it says the given word, the other says nothing.
 *
 * @param node where it belongs
 * @param property an enum
 * @param bad one of its words
 */
public record Guard(Node node, Property property, String bad) {}
