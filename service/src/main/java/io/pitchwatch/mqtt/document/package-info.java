/** Plans as JSON, as docs/schemas describes it; the same on the broker and from the commands. */
@org.jspecify.annotations.NullMarked
package io.pitchwatch.mqtt.document;
