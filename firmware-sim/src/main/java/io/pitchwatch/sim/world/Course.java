package io.pitchwatch.sim.world;

import java.util.Locale;

/** How something goes from nothing to all in a given time. */
public enum Course {
  /** From rest to rest. */
  SMOOTH {
    @Override
    double at(double sinceS, double overS) {
      return Ramp.smooth(sinceS, 0, overS);
    }
  },
  /** At an even rate. */
  LINEAR {
    @Override
    double at(double sinceS, double overS) {
      return sinceS >= overS ? 1 : Math.max(0, sinceS / overS);
    }
  },
  /**
   * Ever more slowly, as soil creeps: ln(1 + 9u)/ln 10, half of it done at a quarter of the time.
   */
  LOG {
    @Override
    double at(double sinceS, double overS) {
      return sinceS >= overS ? 1 : Math.log1p(9 * Math.max(0, sinceS / overS)) / Math.log(10);
    }
  };

  /** A course by its name in files. */
  public static Course labelled(String label) {
    return valueOf(label.toUpperCase(Locale.ROOT));
  }

  /**
   * The share that is done.
   *
   * @param sinceS time since it began, seconds
   * @param overS time it takes in all, seconds
   */
  abstract double at(double sinceS, double overS);
}
