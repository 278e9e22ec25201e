/** What the coach says and takes, node by node: one small class for each. */
package io.pitchwatch.mqtt.tree;
