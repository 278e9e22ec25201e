package io.pitchwatch.sim.chip;

import java.util.Arrays;

/**
 * The FIFO of the ADXL345, table 22 and "FIFO" in its datasheet: 32 levels, and one more sample
 * that waits in the output filter. Samples are the 16-bit words of the data registers.
 *
 * <ul>
 *   <li>bypass: only the newest sample;
 *   <li>FIFO: collects until full, then stops;
 *   <li>stream: drops the oldest when full;
 *   <li>trigger: stream until the trigger, which keeps the last n samples, then FIFO.
 * </ul>
 */
final class Adxl345Fifo {

  static final int LEVELS = 32;
  static final int BYPASS = 0;
  static final int FIFO = 1;
  static final int STREAM = 2;
  static final int TRIGGER = 3;

  private static final int HELD = LEVELS + 1;

  private final short[] words = new short[3 * HELD];
  private final short[] output = new short[3];
  private int mode = BYPASS;
  private int threshold;
  private int oldest;
  private int count;
  private boolean unread;
  private boolean replaced;
  private boolean triggered;

  /** Writes FIFO_CTL: bits 7:6 mode, bits 4:0 the samples of the watermark or kept by a trigger. */
  void configure(int control) {
    int newMode = control >> 6;
    threshold = control & 0x1f;
    if (newMode == BYPASS) {
      count = 0;
      unread = false;
      replaced = false;
    }
    if (newMode != mode) {
      triggered = false;
    }
    mode = newMode;
  }

  /** As at power-on: bypass, nothing held, data registers at 0. */
  void clear() {
    configure(BYPASS);
    Arrays.fill(output, (short) 0);
  }

  /** Whether a new sample would be kept; if not, it need not be computed. */
  boolean accepts() {
    return count < HELD || mode == STREAM || (mode == TRIGGER && !triggered);
  }

  /** A new sample leaves the output filter. */
  void push(short x, short y, short z) {
    if (mode == BYPASS) {
      replaced |= unread;
      unread = true;
      store(output, 0, x, y, z);
      return;
    }
    if (count == HELD) {
      if (!accepts()) {
        return;
      }
      drop(1);
    }
    store(words, 3 * ((oldest + count) % HELD), x, y, z);
    count++;
  }

  /** The trigger: keeps the last n samples and goes on as a FIFO. */
  void trigger() {
    if (mode == TRIGGER && !triggered) {
      triggered = true;
      drop(Math.max(0, count - threshold));
    }
  }

  /** The word that the data registers show for an axis. */
  short word(int axis) {
    return count > 0 ? words[3 * oldest + axis] : output[axis];
  }

  /** The newest sample there is, popped or not. */
  short newest(int axis) {
    return count > 0 ? words[3 * ((oldest + count - 1) % HELD) + axis] : output[axis];
  }

  /** The data registers were read: the level that they showed is gone. */
  void pop() {
    unread = false;
    replaced = false;
    if (count > 0) {
      System.arraycopy(words, 3 * oldest, output, 0, 3);
      drop(1);
    }
  }

  /** Entries as FIFO_STATUS counts them: the one in the filter is not among them. */
  int entries() {
    return Math.min(count, LEVELS);
  }

  boolean isTriggered() {
    return triggered;
  }

  boolean dataReady() {
    return mode == BYPASS ? unread : count > 0;
  }

  boolean watermark() {
    return entries() >= threshold;
  }

  /** In bypass: unread data was replaced. Otherwise: the FIFO is full. */
  boolean overrun() {
    return mode == BYPASS ? replaced : count >= LEVELS;
  }

  private void drop(int samples) {
    oldest = (oldest + samples) % HELD;
    count -= samples;
  }

  private static void store(short[] into, int at, short x, short y, short z) {
    into[at] = x;
    into[at + 1] = y;
    into[at + 2] = z;
  }
}
