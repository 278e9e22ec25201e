package io.pitchwatch.levelling;

/**
 * Counts of pieces by kind, packed four to a word, so that "does it fit into what is left" is one
 * subtraction a word: a field that would go below zero clears its guard bit.
 */
final class Inventory {

  private static final int BITS = 16;
  private static final int FIELDS = 4;
  private static final long GUARD = 0x8000_8000_8000_8000L;

  /** More of one kind than any stack could use. */
  static final int MOST = 0x3fff;

  private Inventory() {}

  static long[] pack(int[] counts) {
    long[] words = new long[(counts.length + FIELDS - 1) / FIELDS];
    for (int i = 0; i < counts.length; i++) {
      words[i / FIELDS] |= (long) Math.min(counts[i], MOST) << (BITS * (i % FIELDS));
    }
    return words;
  }

  /** Whether a use fits into what is there; every field of both is at most {@link #MOST}. */
  static boolean holds(long[] there, long[] use) {
    for (int i = 0; i < there.length; i++) {
      if (((there[i] | GUARD) - use[i] & GUARD) != GUARD) {
        return false;
      }
    }
    return true;
  }

  /** How many kinds have room in a packed inventory, some of them perhaps unused. */
  static int kinds(long[] packed) {
    return packed.length * FIELDS;
  }

  /** How many there are of one kind. */
  static int of(long[] packed, int kind) {
    return (int) (packed[kind / FIELDS] >>> (BITS * (kind % FIELDS))) & 0xffff;
  }

  /** Writes out how many there are of each kind. */
  static void unpack(long[] packed, int[] counts) {
    for (int kind = 0; kind < kinds(packed); kind++) {
      counts[kind] = of(packed, kind);
    }
  }

  /** What is left after a use that fits. */
  static void take(long[] there, long[] use, long[] left) {
    for (int i = 0; i < there.length; i++) {
      left[i] = there[i] - use[i];
    }
  }

  /** What is left after a use that fits, with something returned. */
  static void give(long[] there, long[] use, long[] returned, long[] left) {
    for (int i = 0; i < there.length; i++) {
      left[i] = there[i] - use[i] + returned[i];
    }
  }

  /** The least of each kind. */
  static long[] least(long[][] uses) {
    long[] least = uses[0].clone();
    for (long[] use : uses) {
      for (int i = 0; i < least.length; i++) {
        long mask = less(use[i], least[i]);
        least[i] = (least[i] & ~mask) | (use[i] & mask);
      }
    }
    return least;
  }

  /** The most of each kind. */
  static long[] most(long[][] uses) {
    long[] most = uses[0].clone();
    for (long[] use : uses) {
      for (int i = 0; i < most.length; i++) {
        long mask = less(most[i], use[i]);
        most[i] = (most[i] & ~mask) | (use[i] & mask);
      }
    }
    return most;
  }

  /** All bits of each field where the first is less than the second. */
  private static long less(long first, long second) {
    long smaller = ((((first | GUARD) - second) & GUARD) ^ GUARD) >>> (BITS - 1);
    return smaller * ((1L << BITS) - 1);
  }

  /** What a use costs. */
  static double cost(long[] use, double[] price) {
    double cost = 0;
    for (int i = 0; i < price.length; i++) {
      cost += price[i] * of(use, i);
    }
    return cost;
  }

  static long[] sum(long[] a, long[] b) {
    long[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }
}
