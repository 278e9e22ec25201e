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
    return othersMm(-1, box) - mostMm;
  }

  /** By how much it is broken at the most. */
  double mostOverMm(Box box) {
    double sum = -mostMm;
    for (int k = 0; k < perMean.length; k++) {
      sum -= box.leastMm(k, -perMean[k], -perApart[k]);
    }
    return sum;
  }

  /** What counts an axle's mean lift; of a right station alone it is half of what is apart. */
  double meanFactor(int k, Box box) {
    return box.rightOnly[k] ? perMean[k] + 2 * perApart[k] : perMean[k];
  }

  /** What counts how far its stations are apart, if that can differ from the mean. */
  double apartFactor(int k, Box box) {
    return box.rightOnly[k] ? 0 : perApart[k];
  }

  /** What mean lift of one axle, times its factor, it leaves where the others lie in the box. */
  double leavesMeanMm(int k, Box box) {
    double apartMm = box.rightOnly[k] ? 0 : box.leastMm(k, 0, perApart[k]);
    return mostMm - othersMm(k, box) - apartMm;
  }

  /** The same of how far its stations are apart. */
  double leavesApartMm(int k, Box box) {
    return mostMm - othersMm(k, box) - box.leastMm(k, perMean[k], 0);
  }

  private double othersMm(int butAxle, Box box) {
    double sum = 0;
    for (int k = 0; k < perMean.length; k++) {
      if (k != butAxle) {
        sum += box.leastMm(k, perMean[k], perApart[k]);
      }
    }
    return sum;
  }
}
