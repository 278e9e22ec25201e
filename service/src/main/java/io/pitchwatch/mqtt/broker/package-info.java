/**
 * The built-in broker: an embedded ActiveMQ Artemis. Only {@code ArtemisServer} and what it names
 * touch Artemis' classes, so that they are not loaded where another broker is used.
 */
package io.pitchwatch.mqtt.broker;
