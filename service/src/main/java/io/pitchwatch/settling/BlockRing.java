package io.pitchwatch.settling;

/** The blocks of one angle over the last week, newest last, events taken out. */
final class BlockRing {

  /** A week of blocks. */
  static final int CAPACITY = 7 * 24 * 6;

  private final long[] nanos = new long[CAPACITY];
  private final double[] angleRad = new double[CAPACITY];
  private final double[] varianceRad2 = new double[CAPACITY];
  private final double[] busyRad = new double[CAPACITY];
  private final double[] warmerC = new double[CAPACITY];
  private final double[] loosenRad = new double[CAPACITY];
  private int newest = -1;
  private int count;

  void add(AxisBlock block) {
    newest = (newest + 1) % CAPACITY;
    count = Math.min(count + 1, CAPACITY);
    nanos[newest] = block.nanos;
    angleRad[newest] = block.angleRad;
    varianceRad2[newest] = block.varianceRad2;
    busyRad[newest] = block.busyRad;
    warmerC[newest] = block.warmerC;
    loosenRad[newest] = block.loosenRad;
  }

  void clear() {
    count = 0;
  }

  int count() {
    return count;
  }

  /** Reads the block so many places after the oldest. */
  void get(int place, AxisBlock block) {
    int at = Math.floorMod(newest - count + 1 + place, CAPACITY);
    block.nanos = nanos[at];
    block.angleRad = angleRad[at];
    block.varianceRad2 = varianceRad2[at];
    block.busyRad = busyRad[at];
    block.warmerC = warmerC[at];
    block.loosenRad = loosenRad[at];
  }
}
