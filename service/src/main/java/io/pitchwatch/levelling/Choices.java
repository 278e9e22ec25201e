package io.pitchwatch.levelling;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under the two stations of one axle and takes equally many pieces; arrays beside
 * each other, because there may be hundreds of thousands on a small computer.
 */
final class Choices {

  /** Mean lifts are sorted into no more bands than this. */
  private static final int MOST_BANDS = 32;

  /** An index costs about as much as looking at everything so many times. */
  private static final long SCANS = 8;

  final int count;

  /** By how far the axle turns, right side up, radians, ascending. */
  final double[] turnRad;

  /** Mean lift of the two stations over what lies under every tyre, millimetres. */
  final double[] meanMm;

  /** Pieces taken, by kind, packed. */
  final long[][] use;

  /** The least of {@link #use}, kind by kind, packed. */
  final long[] leastUse;

  /** Least and most of {@link #meanMm}. */
  final double leastMeanMm;

  final double mostMeanMm;

  private final @Nullable Stack[] left;
  private final Stack[] right;
  private long scanned;
  private @Nullable Fitting fitting;

  /**
   * One choice.
   *
   * @param turnRad by how far the axle turns
   * @param left what stands under the left station; null if nothing is decided about it
   * @param right what stands under the right station
   */
  record Choice(double turnRad, @Nullable Stack left, Stack right) {

    /** The taller of the two stacks, millimetres. */
    double tallestMm() {
      return left == null ? right.heightMm() : Math.max(left.heightMm(), right.heightMm());
    }
  }

  /** From the least to the most. */
  record Range(double from, double to) {

    static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** What lies in both. */
    Range and(Range other) {
      return new Range(Math.max(from, other.from), Math.min(to, other.to));
    }
  }

  /** What is wanted of a choice. */
  interface Wanted {
    /** Whether a choice is of interest. */
    boolean is(double turnRad, double meanMm, long[] use);
  }

  /**
   * Choices by their turns.
   *
   * @param turnRad ascending
   * @param meanMm of each
   * @param use of each
   * @param left of each
   * @param right of each
   */
  Choices(double[] turnRad, double[] meanMm, long[][] use, @Nullable Stack[] left, Stack[] right) {
    this.count = turnRad.length;
    this.turnRad = turnRad;
    this.meanMm = meanMm;
    this.use = use;
    this.left = left;
    this.right = right;
    leastMeanMm = Arrays.stream(meanMm).min().orElse(Double.POSITIVE_INFINITY);
    mostMeanMm = Arrays.stream(meanMm).max().orElse(Double.NEGATIVE_INFINITY);
    leastUse = count == 0 ? new long[0] : Inventory.least(use);
  }

  /** Those that are still wanted. */
  Choices only(Wanted wanted) {
    int[] kept = new int[count];
    int n = 0;
    for (int i = 0; i < count; i++) {
      if (wanted.is(turnRad[i], meanMm[i], use[i])) {
        kept[n++] = i;
      }
    }
    return n == count ? this : only(Arrays.copyOf(kept, n));
  }

  private Choices only(int[] kept) {
    double[] turns = new double[kept.length];
    double[] means = new double[kept.length];
    long[][] uses = new long[kept.length][];
    Stack[] lefts = new Stack[kept.length];
    Stack[] rights = new Stack[kept.length];
    for (int i = 0; i < kept.length; i++) {
      turns[i] = turnRad[kept[i]];
      means[i] = meanMm[kept[i]];
      uses[i] = use[kept[i]];
      lefts[i] = left[kept[i]];
      rights[i] = right[kept[i]];
    }
    return new Choices(turns, means, uses, lefts, rights);
  }

  boolean isEmpty() {
    return count == 0;
  }

  Choice get(int i) {
    return new Choice(turnRad[i], left[i], right[i]);
  }

  double leastTurnRad() {
    return turnRad[0];
  }

  double mostTurnRad() {
    return turnRad[count - 1];
  }

  /**
   * Visits, by their turns, the choices that fit into what there is; none whose mean lift lies in
   * the range is passed over, though some outside it may be visited.
   *
   * @param there pieces, packed
   * @param turn least and most, radians
   * @param mean least and most, millimetres
   * @param visit says whether to go on
   */
  void visit(long[] there, Range turn, Range mean, IntPredicate visit) {
    int from = Sorted.from(turnRad, turn.from());
    int to = Sorted.from(turnRad, Math.nextUp(turn.to()));
    scanned += Math.max(0, to - from);
    if (fitting == null && scanned <= SCANS * count) {
      scan(there, mean, from, to, visit);
      return;
    }
    int kinds = Inventory.kinds(there);
    int[] limits = new int[kinds + 2];
    Inventory.unpack(there, limits);
    limits[kinds] = mean.to() < leastMeanMm ? -1 : band(mean.to());
    limits[kinds + 1] = mean.from() > mostMeanMm ? -1 : bands() - 1 - band(mean.from());
    if (fitting == null) {
      fitting = index(kinds);
    }
    fitting.visit(limits, from, to, visit);
  }

  private void scan(long[] there, Range mean, int from, int to, IntPredicate visit) {
    for (int i = from; i < to; i++) {
      if (meanMm[i] >= mean.from()
          && meanMm[i] <= mean.to()
          && Inventory.holds(there, use[i])
          && !visit.test(i)) {
        return;
      }
    }
  }

  /** By the count of each kind, and by the bands of mean lifts from below and from above. */
  private Fitting index(int kinds) {
    int[] most = new int[kinds + 2];
    Inventory.unpack(Inventory.most(use), most);
    most[kinds] = bands() - 1;
    most[kinds + 1] = bands() - 1;
    Fitting index = new Fitting(most);
    int[] values = new int[kinds + 2];
    for (int i = 0; i < count; i++) {
      Inventory.unpack(use[i], values);
      values[kinds] = band(meanMm[i]);
      values[kinds + 1] = bands() - 1 - values[kinds];
      index.add(values);
    }
    return index;
  }

  private int bands() {
    return Math.min(MOST_BANDS, 1 + count / Long.SIZE);
  }

  private int band(double mm) {
    double along = (mm - leastMeanMm) / (mostMeanMm - leastMeanMm) * bands();
    return (int) Math.max(0, Math.min(bands() - 1, along));
  }
}
