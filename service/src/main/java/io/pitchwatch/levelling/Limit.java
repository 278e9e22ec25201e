package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;

/**
 * One limit of the axles' lifts: Σ perMean·mean + perApart·apart ≤ most.
 *
 * @param perMean factor of each axle's mean lift over what lies under every tyre
 * @param perApart factor of what its right station stands higher than its left
 * @param mostMm millimetres
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared, never written to.
record Limit(double[] perMean, double[] perApart, double mostMm) {

  /** The same limit, looser. */
  Limit looser(double byMm) {
    return new Limit(perMean, perApart, mostMm + byMm);
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

  /** What mean lifts of one axle it leaves where the others lie in the box, and it be looser. */
  Range meanMm(int k, Box box, double looserMm) {
    return edge(perMean[k], mostMm + looserMm, leastMm(box, k, -1));
  }

  /** How far apart it leaves the stations of one axle. */
  Range apartMm(int k, Box box, double looserMm) {
    return edge(perApart[k], mostMm + looserMm, leastMm(box, -1, k));
  }

  private static Range edge(double factor, double mostMm, double othersMm) {
    double edge = (mostMm - othersMm) / factor;
    return new Range(
        factor < 0 ? edge : Double.NEGATIVE_INFINITY, factor > 0 ? edge : Double.POSITIVE_INFINITY);
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
