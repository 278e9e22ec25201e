package io.pitchwatch.mqtt.link;

/**
 * One subscription.
 *
 * @param text a topic or a filter with wildcards
 * @param qos highest quality of service wanted
 */
public record Filter(String text, int qos) {}
