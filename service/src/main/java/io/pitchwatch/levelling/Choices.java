package io.pitchwatch.levelling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under the two stations of one axle and takes equally many pieces; arrays beside
 * each other, because millions of them are compared.
 */
final class Choices {

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

  private final Choice[] choices;

  /**
   * One choice.
   *
   * @param turnRad by how far the axle turns
   * @param meanMm mean lift
   * @param use pieces taken, packed
   * @param left what stands under the left station; null if nothing is decided about it
   * @param right what stands under the right station
   */
  @SuppressWarnings("ArrayRecordComponent") // Millions are compared; nobody writes to it.
  record Choice(double turnRad, double meanMm, long[] use, @Nullable Stack left, Stack right) {

    /** The taller of the two stacks, millimetres. */
    double tallestMm() {
      return left == null ? right.heightMm() : Math.max(left.heightMm(), right.heightMm());
    }
  }

  /** What is wanted of a choice. */
  interface Wanted {
    /** Whether a choice is of interest. */
    boolean is(Choice choice);
  }

  /** Choices in any order. */
  static Choices of(List<Choice> unsorted) {
    Choice[] choices = unsorted.toArray(new Choice[0]);
    Arrays.sort(choices, (a, b) -> Double.compare(a.turnRad, b.turnRad));
    return new Choices(choices);
  }

  private Choices(Choice[] sorted) {
    choices = sorted;
    count = choices.length;
    turnRad = new double[count];
    meanMm = new double[count];
    use = new long[count][];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      turnRad[i] = choices[i].turnRad();
      meanMm[i] = choices[i].meanMm();
      use[i] = choices[i].use();
      least = Math.min(least, meanMm[i]);
      most = Math.max(most, meanMm[i]);
    }
    leastMeanMm = least;
    mostMeanMm = most;
    leastUse = count == 0 ? new long[0] : Inventory.least(use);
  }

  /** Those that are still wanted. */
  Choices only(Wanted wanted) {
    List<Choice> kept = new ArrayList<>();
    for (Choice choice : choices) {
      if (wanted.is(choice)) {
        kept.add(choice);
      }
    }
    return kept.size() == count ? this : new Choices(kept.toArray(new Choice[0]));
  }

  boolean isEmpty() {
    return count == 0;
  }

  Choice get(int i) {
    return choices[i];
  }

  double leastTurnRad() {
    return turnRad[0];
  }

  double mostTurnRad() {
    return turnRad[count - 1];
  }

  /** Index of the first choice that turns by at least so much. */
  int from(double leastRad) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (turnRad[middle] < leastRad) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
