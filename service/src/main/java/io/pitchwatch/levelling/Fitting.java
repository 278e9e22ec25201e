package io.pitchwatch.levelling;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Which of many items keep within limits, 64 of them at a time: for each column and each value
 * below its greatest, a word of bits says whose value is no more than that. Who keeps within all
 * limits is in one such word of every column.
 */
final class Fitting {

  private static final int WORD = Long.SIZE;

  private final int[] most;
  private final int[] start;

  /** So many words for each 64 items. */
  private final int stride;

  private long[] bits = {};
  private int items;

  /**
   * An index without items.
   *
   * @param most by column, no value is greater
   */
  Fitting(int[] most) {
    this.most = most;
    start = new int[most.length];
    int words = 0;
    for (int column = 0; column < most.length; column++) {
      start[column] = words;
      words += most[column];
    }
    stride = words;
  }

  /** An index over uses, packed: its columns are the kinds. */
  static Fitting of(long[][] uses) {
    int[] values = new int[Inventory.kinds(uses[0])];
    Inventory.unpack(Inventory.most(uses), values);
    Fitting fitting = new Fitting(values.clone());
    for (long[] use : uses) {
      Inventory.unpack(use, values);
      fitting.add(values);
    }
    return fitting;
  }

  /** Words of eight bytes that it takes in memory. */
  int words() {
    return bits.length + most.length + 8;
  }

  /** Adds an item with these values, 0 or more, by column. */
  void add(int[] values) {
    int block = items / WORD * stride;
    if (block + stride > bits.length) {
      bits = Arrays.copyOf(bits, Math.max(block + stride, 2 * bits.length));
    }
    long bit = 1L << items;
    for (int column = 0; column < most.length; column++) {
      int end = block + start[column] + most[column];
      for (int i = block + start[column] + values[column]; i < end; i++) {
        bits[i] |= bit;
      }
    }
    items++;
  }

  /** Whether any item keeps within all limits. */
  boolean any(int[] limits) {
    for (int first = 0; first < items; first += WORD) {
      if (fit(limits, first, first, items) != 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Visits those that keep within all limits, in the order in which they were added.
   *
   * @param limits by column; below 0 nothing keeps within it
   * @param from the first item to look at
   * @param to one past the last
   * @param visit says whether to go on
   */
  void visit(int[] limits, int from, int to, IntPredicate visit) {
    for (int first = from / WORD * WORD; first < to; first += WORD) {
      for (long fit = fit(limits, first, from, to); fit != 0; fit &= fit - 1) {
        if (!visit.test(first + Long.numberOfTrailingZeros(fit))) {
          return;
        }
      }
    }
  }

  /** Of the 64 items from the first on those that keep within the limits and lie in the range. */
  private long fit(int[] limits, int first, int from, int to) {
    long fit = from > first ? -1L << from : -1L;
    if (to - first < WORD) {
      fit &= (1L << to) - 1;
    }
    int block = first / WORD * stride;
    for (int column = 0; column < most.length && fit != 0; column++) {
      if (limits[column] < most[column]) {
        fit = limits[column] < 0 ? 0 : fit & bits[block + start[column] + limits[column]];
      }
    }
    return fit;
  }
}
