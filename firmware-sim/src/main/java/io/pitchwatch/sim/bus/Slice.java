package io.pitchwatch.sim.bus;

import java.util.Objects;

/** Part of a byte array; not copied. */
public final class Slice {

  /** No bytes. */
  public static final Slice NONE = new Slice(new byte[0], 0, 0);

  private final byte[] bytes;
  private final int offset;
  private final int length;

  /**
   * Part of an array.
   *
   * @param bytes the array
   * @param offset of the first byte
   * @param length how many
   * @throws IndexOutOfBoundsException if they do not lie in the array
   */
  public Slice(byte[] bytes, int offset, int length) {
    Objects.checkFromIndexSize(offset, length, bytes.length);
    this.bytes = bytes;
    this.offset = offset;
    this.length = length;
  }

  int length() {
    return length;
  }

  int get(int index) {
    return bytes[offset + index] & 0xff;
  }

  void set(int index, int value) {
    bytes[offset + index] = (byte) value;
  }
}
