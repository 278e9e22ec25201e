/** The coach on a broker: what it says, what it takes, and the link that survives the world. */
package io.pitchwatch.mqtt;
