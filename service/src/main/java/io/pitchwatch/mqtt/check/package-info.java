/** The remote check: a question over MQTT, answered with what was read after it arrived. */
package io.pitchwatch.mqtt.check;
