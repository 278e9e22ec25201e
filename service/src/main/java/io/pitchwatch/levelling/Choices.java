package io.pitchwatch.levelling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under the two stations of one axle and takes the same pieces; arrays beside each
 * other, because millions of them are compared.
 */
final class Choices {

  /** Pieces taken, by kind, packed. */
  final long[] use;

  final int count;

  /** By how far the axle turns, right side up, radians, ascending. */
  final double[] turnRad;

  /** Mean lift of the two stations over what lies under every tyre, millimetres. */
  final double[] meanMm;

  /** Least and most of {@link #meanMm}. */
  final double leastMeanMm;

  final double mostMeanMm;

  private final List<Choice> choices;

  /**
   * One choice.
   *
   * @param turnRad by how far the axle turns
   * @param meanMm mean lift
   * @param tallestMm the taller of the two stacks
   * @param left what stands under the left station; null if nothing is decided about it
   * @param right what stands under the right station
   */
  record Choice(
      double turnRad, double meanMm, double tallestMm, @Nullable Stack left, Stack right) {}

  Choices(long[] use, List<Choice> unsorted) {
    this.use = use;
    choices = new ArrayList<>(unsorted);
    choices.sort(Comparator.comparingDouble(Choice::turnRad));
    count = choices.size();
    turnRad = new double[count];
    meanMm = new double[count];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      turnRad[i] = choices.get(i).turnRad();
      meanMm[i] = choices.get(i).meanMm();
      least = Math.min(least, meanMm[i]);
      most = Math.max(most, meanMm[i]);
    }
    leastMeanMm = least;
    mostMeanMm = most;
  }

  Choice get(int i) {
    return choices.get(i);
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
