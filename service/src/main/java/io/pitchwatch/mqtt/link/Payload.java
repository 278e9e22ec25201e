package io.pitchwatch.mqtt.link;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The bytes of a message. */
public final class Payload {

  /** No bytes; as a value that stands, it takes away what stood before (MQTT 5.0, 3.3.1.3). */
  public static final Payload NOTHING = new Payload(new byte[0]);

  private final byte[] bytes;

  private Payload(byte[] bytes) {
    this.bytes = bytes;
  }

  /** The given bytes, not copied: they must not change any more. */
  public static Payload of(byte[] bytes) {
    return new Payload(bytes);
  }

  /** The text as UTF-8. */
  public static Payload of(String text) {
    return new Payload(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The bytes, not copied: do not change them. */
  public byte[] bytes() {
    return bytes;
  }

  /** How many bytes. */
  public int length() {
    return bytes.length;
  }

  /** The bytes as text; empty if they are not well-formed UTF-8. */
  public Optional<String> text() {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Payload payload && Arrays.equals(bytes, payload.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  /** The length only: what strangers send has no place in a log. */
  @Override
  public String toString() {
    return bytes.length + " bytes";
  }
}
