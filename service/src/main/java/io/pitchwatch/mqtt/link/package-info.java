/** One connection after another to one broker, by Eclipse Paho, and what waits in between. */
package io.pitchwatch.mqtt.link;
