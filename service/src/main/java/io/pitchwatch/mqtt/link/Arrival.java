package io.pitchwatch.mqtt.link;

import java.util.Optional;

/**
 * One message that came in.
 *
 * @param topic where it was sent to
 * @param payload what; nothing when it was longer than is kept
 * @param length of the payload as it came, bytes
 * @param retained whether it stood on the broker, or was sent to stand there
 * @param responseTopic where an answer is wanted, unchecked; empty if none is
 * @param correlation what is to come back with the answer
 * @param atNanos monotonic time of arrival
 */
public record Arrival(
    String topic,
    Payload payload,
    int length,
    boolean retained,
    Optional<String> responseTopic,
    Optional<Payload> correlation,
    long atNanos) {

  /** Longest payload that is kept, bytes: more than any description or command needs. */
  public static final int LONGEST_KEPT = 64 * 1024;
}
