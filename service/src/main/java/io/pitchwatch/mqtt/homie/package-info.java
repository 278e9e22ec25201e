/** The Homie convention, version 5, as types: ids, topics, nodes, properties, the description. */
package io.pitchwatch.mqtt.homie;
