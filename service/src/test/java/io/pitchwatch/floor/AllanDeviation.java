package io.pitchwatch.floor;

/**
 * Allan deviations of frequency samples: how far means over a time scatter from one to the next
 * (NIST SP 1065, W. J. Riley, Handbook of Frequency Stability Analysis, 2008, section 5.2). Used to
 * judge recordings; x is the running sum of the samples.
 */
final class AllanDeviation {

  private final double[] phase;

  private AllanDeviation(double[] phase) {
    this.phase = phase;
  }

  /** Of samples y taken at a steady pace, which is the unit of time. */
  static AllanDeviation ofSamples(double... y) {
    double[] phase = new double[y.length + 1];
    for (int i = 0; i < y.length; i++) {
      phase[i + 1] = phase[i] + y[i];
    }
    return new AllanDeviation(phase);
  }

  /** Of phase points. */
  static AllanDeviation ofPhase(double... x) {
    return new AllanDeviation(x.clone());
  }

  /** Means over m samples that follow on one another (equation 7). */
  double plain(int m) {
    return deviation(m, m);
  }

  /** Means over m samples, one begun at each sample (equation 11). */
  double overlapping(int m) {
    return deviation(m, 1);
  }

  private double deviation(int m, int stride) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i + 2 * m < phase.length; i += stride) {
      double second = phase[i + 2 * m] - 2 * phase[i + m] + phase[i];
      sum += second * second;
      count++;
    }
    return Math.sqrt(sum / (2.0 * m * m * count));
  }

  /** The modified deviation, which also averages the phase (equation 14). */
  double modified(int m) {
    double sum = 0;
    int count = 0;
    for (int j = 0; j + 3 * m <= phase.length; j++) {
      double inner = 0;
      for (int i = j; i < j + m; i++) {
        inner += phase[i + 2 * m] - 2 * phase[i + m] + phase[i];
      }
      sum += inner * inner;
      count++;
    }
    return Math.sqrt(sum / (2.0 * m * m * m * m * count));
  }
}
