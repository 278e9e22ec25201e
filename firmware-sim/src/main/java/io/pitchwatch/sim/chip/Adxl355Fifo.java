package io.pitchwatch.sim.chip;

/**
 * The FIFO of the ADXL355: 96 places of one axis each, x then y then z, the oldest set dropped when
 * full. Each place is read as three bytes: 20 bits of data on the left, bit 1 set if the FIFO was
 * empty, bit 0 set if the place holds x.
 */
final class Adxl355Fifo {

  static final int PLACES = 96;

  private static final int AXES = 3;
  private static final int EMPTY = 0x02;
  private static final int IS_X = 0x01;
  private static final int BYTES = 3;

  private final int[] places = new int[PLACES];
  private int oldest;
  private int count;
  private int word;
  private int bytesLeft;
  private boolean lost;

  /** A new set: three 20-bit words. */
  void push(int x, int y, int z) {
    if (count + AXES > PLACES) {
      lost = true;
      int dropped = AXES - oldest % AXES;
      oldest = (oldest + dropped) % PLACES;
      count -= dropped;
    }
    put(x);
    put(y);
    put(z);
  }

  private void put(int value) {
    places[(oldest + count) % PLACES] = value;
    count++;
  }

  /** Places that hold data. */
  int entries() {
    return count;
  }

  /** Whether data was dropped since the last time this was asked. */
  boolean takeLost() {
    boolean was = lost;
    lost = false;
    return was;
  }

  /** A transfer begins: the next byte read is the first of a place. */
  void align() {
    bytesLeft = 0;
  }

  /** The next byte. */
  int read() {
    if (bytesLeft == 0) {
      bytesLeft = BYTES;
      word = take();
    }
    bytesLeft--;
    return word >> (8 * bytesLeft) & 0xff;
  }

  private int take() {
    if (count == 0) {
      return EMPTY;
    }
    int place = oldest;
    oldest = (oldest + 1) % PLACES;
    count--;
    // Sets begin at multiples of three, since they are put and dropped as sets.
    return (places[place] & 0xfffff) << 4 | (place % AXES == 0 ? IS_X : 0);
  }

  void clear() {
    oldest = 0;
    count = 0;
    lost = false;
  }
}
