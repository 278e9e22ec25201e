package io.pitchwatch.sim.chip;

/**
 * The FIFO of the MPU-6050: 1024 bytes in a ring. When full the oldest bytes go, not the oldest
 * samples, so that what is left no longer begins with the first byte of one.
 */
final class Mpu6050Fifo {

  static final int SIZE = 1024;

  private final byte[] bytes = new byte[SIZE];
  private int oldest;
  private int count;
  private byte last;
  private boolean overflowed;

  /** A 16-bit word, high byte first. */
  void push(int word) {
    put((byte) (word >> 8));
    put((byte) word);
  }

  private void put(byte value) {
    if (count == SIZE) {
      overflowed = true;
      oldest = (oldest + 1) % SIZE;
      count--;
    }
    bytes[(oldest + count) % SIZE] = value;
    count++;
  }

  int count() {
    return count;
  }

  /** The oldest byte; the last one read again if there is none. */
  int read() {
    if (count > 0) {
      last = bytes[oldest];
      oldest = (oldest + 1) % SIZE;
      count--;
    }
    return last & 0xff;
  }

  /** Whether bytes were lost since the last time this was asked. */
  boolean takeOverflowed() {
    boolean was = overflowed;
    overflowed = false;
    return was;
  }

  void clear() {
    count = 0;
    overflowed = false;
  }
}
