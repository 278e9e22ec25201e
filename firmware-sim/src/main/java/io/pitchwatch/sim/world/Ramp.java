package io.pitchwatch.sim.world;

/** A smooth way from 0 to 1. */
final class Ramp {

  private Ramp() {}

  /** 0 before the start, 1 after the end, at rest at both: 3u² − 2u³. */
  static double smooth(double time, double start, double end) {
    if (time >= end) {
      return 1;
    }
    if (time <= start) {
      return 0;
    }
    double u = (time - start) / (end - start);
    return u * u * (3 - 2 * u);
  }
}
