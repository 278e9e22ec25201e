package io.pitchwatch.levelling;

import java.util.List;

/**
 * One limit of the axles' lifts: Σ perMean·mean + perApart·apart ≤ most.
 *
 * @param perMean factor of each axle's mean lift over what lies under every tyre
 * @param perApart factor of what its right station stands higher than its left
 * @param mostMm millimetres
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared, never written to.
record Limit(double[] perMean, double[] perApart, double mostMm) {

  /** Those of some limits that could be broken in a box. */
  static List<Limit> within(List<Limit> limits, Box box) {
    return limits.stream().filter(limit -> limit.mostOverMm(box) > 0).toList();
  }

  /** By how much it is broken at the least, wherever in the box; negative where it is kept. */
  double leastOverMm(Box box) {
    return leastMm(box, -1, -1) - mostMm;
  }

  /** By how much it is broken at the most. */
  double mostOverMm(Box box) {
    double sum = -mostMm;
    for (int k = 0; k < perMean.length; k++) {
      sum -= least(-perMean[k], box.fromMm[k], box.toMm[k]);
      sum -= least(-perApart[k], box.fromApartMm[k], box.toApartMm[k]);
    }
    return sum;
  }

  /** What mean lift of one axle, times its factor, it leaves where the others lie in the box. */
  double leavesMeanMm(int k, Box box) {
    return mostMm - leastMm(box, k, -1);
  }

  /** The same of how far its stations are apart. */
  double leavesApartMm(int k, Box box) {
    return mostMm - leastMm(box, -1, k);
  }

  private double leastMm(Box box, int butMean, int butApart) {
    double sum = 0;
    for (int k = 0; k < perMean.length; k++) {
      if (k != butMean) {
        sum += least(perMean[k], box.fromMm[k], box.toMm[k]);
      }
      if (k != butApart) {
        sum += least(perApart[k], box.fromApartMm[k], box.toApartMm[k]);
      }
    }
    return sum;
  }

  private static double least(double factor, double from, double to) {
    return factor == 0 ? 0 : factor * (factor > 0 ? from : to);
  }
}
