/** Announces the tree to home-automation hubs by device-based MQTT discovery messages. */
package io.pitchwatch.mqtt.discovery;
