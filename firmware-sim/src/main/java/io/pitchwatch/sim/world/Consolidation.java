package io.pitchwatch.sim.world;

/** Water pressed out of soil: Terzaghi's one-dimensional consolidation. */
final class Consolidation {

  private static final int MOST_TERMS = 200;

  private Consolidation() {}

  /**
   * Average degree of consolidation, U = 1 − Σ 2/M²·exp(−M²·Tv) with M = π(2m + 1)/2, m = 0, 1, …
   *
   * @param timeFactor Tv = cv·t/H², 0 or more
   * @return 0 to 1
   */
  static double degree(double timeFactor) {
    if (timeFactor <= 0) {
      return 0;
    }
    if (timeFactor < 0.01) {
      // The series' limit for small Tv; the terms that it leaves out are below 1e-9 here.
      return 2 * Math.sqrt(timeFactor / Math.PI);
    }
    double left = 0;
    for (int m = 0; m < MOST_TERMS; m++) {
      double big = Math.PI * (2 * m + 1) / 2;
      double term = 2 / (big * big) * Math.exp(-big * big * timeFactor);
      left += term;
      if (term < 1e-12) {
        break;
      }
    }
    return 1 - left;
  }
}
