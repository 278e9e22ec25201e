package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.tree.Commands;

/**
 * What a link is made of.
 *
 * @param device what stands behind the tree
 * @param settings how the broker is reached
 * @param commands takes what people ask for
 * @param watch is told how the link fares
 * @param clock the time
 */
public record LinkParts(
    Device device, MqttSettings settings, Commands commands, LinkWatch watch, LinkClock clock) {}
