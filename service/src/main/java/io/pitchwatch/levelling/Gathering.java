package io.pitchwatch.levelling;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Gathers choices of equally many pieces. Two that lift both stations equally and take the same are
 * one: a piece may lie under the left station or, with another in exchange, under the right.
 */
final class Gathering {

  private static final int EMPTY = 0;

  /** Lifts are sorted with places below them: lifts of either sign, to two metres. */
  private static final int PLACE_BITS = 31;

  private static final long MOST_NM = 1L << 31;

  private final long groundNm;
  private final double trackMm;
  private final int words;
  private int count;
  private @Nullable Stack[] left = new Stack[8];
  private Stack[] right = new Stack[8];

  /** Of each choice both heights, then what it takes, packed. */
  private long[] keys;

  private long[] key;

  /** Places plus one, by a hash of the key. */
  private int[] table = new int[16];

  /**
   * Nothing so far.
   *
   * @param trackMm between the stations
   * @param groundMm thickness of what lies under every tyre and so lifts nothing
   * @param words of a packed use
   */
  Gathering(double trackMm, double groundMm, int words) {
    this.trackMm = trackMm;
    this.groundNm = Math.round(groundMm * Kind.NM_PER_MM);
    this.words = words;
    keys = new long[8 * (words + 2)];
    key = new long[words + 2];
  }

  /**
   * Adds a choice unless one like it is there.
   *
   * @param leftStack what stands under the left station; null if nothing is decided about it
   * @param rightStack what stands under the right one
   */
  void add(@Nullable Stack leftStack, Stack rightStack) {
    key[0] = leftStack == null ? groundNm : leftStack.heightNm();
    key[1] = rightStack.heightNm();
    for (int i = 0; i < words; i++) {
      key[i + 2] = rightStack.use()[i] + (leftStack == null ? 0 : leftStack.use()[i]);
    }
    int at = slot(key, 0);
    if (table[at] != EMPTY) {
      return;
    }
    if (count == left.length) {
      grow();
      at = slot(key, 0);
    }
    left[count] = leftStack;
    right[count] = rightStack;
    System.arraycopy(key, 0, keys, count * key.length, key.length);
    table[at] = ++count;
  }

  /** Words of eight bytes that it takes in memory, also while it becomes choices. */
  long words() {
    return 2L * count * (key.length + 5);
  }

  /** Where the key that starts somewhere is, or would be put. */
  private int slot(long[] there, int start) {
    long hash = 0;
    for (int i = 0; i < key.length; i++) {
      hash = (hash ^ there[start + i]) * 0x9E37_79B9_7F4A_7C15L;
      hash ^= hash >>> 32;
    }
    int at = (int) hash & table.length - 1;
    while (table[at] != EMPTY && !isAt(table[at] - 1, there, start)) {
      at = at + 1 & table.length - 1;
    }
    return at;
  }

  private boolean isAt(int place, long[] there, int start) {
    int from = place * key.length;
    return Arrays.equals(keys, from, from + key.length, there, start, start + key.length);
  }

  private void grow() {
    left = Arrays.copyOf(left, 2 * count);
    right = Arrays.copyOf(right, 2 * count);
    keys = Arrays.copyOf(keys, 2 * count * key.length);
    table = new int[4 * count];
    for (int i = 0; i < count; i++) {
      table[slot(keys, i * key.length)] = i + 1;
    }
  }

  /** All of them, by their turns. */
  Choices choices() {
    long[] lifts = new long[count];
    for (int i = 0; i < count; i++) {
      long liftNm = keys[i * key.length + 1] - keys[i * key.length];
      lifts[i] = ((liftNm + MOST_NM) << PLACE_BITS) | i;
    }
    Arrays.sort(lifts);
    double[] turnRad = new double[count];
    double[] meanMm = new double[count];
    long[][] uses = new long[count][];
    @Nullable Stack[] lefts = new Stack[count];
    Stack[] rights = new Stack[count];
    for (int n = 0; n < count; n++) {
      int i = (int) lifts[n] & Integer.MAX_VALUE;
      int from = i * key.length;
      double liftMm = (keys[from + 1] - keys[from]) / Kind.NM_PER_MM;
      turnRad[n] = Math.atan(liftMm / trackMm);
      meanMm[n] = (keys[from] + keys[from + 1] - 2 * groundNm) / Kind.NM_PER_MM / 2;
      uses[n] = Arrays.copyOfRange(keys, from + 2, from + key.length);
      lefts[n] = left[i];
      rights[n] = right[i];
    }
    return new Choices(turnRad, meanMm, uses, lefts, rights);
  }
}
