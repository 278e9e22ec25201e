package io.pitchwatch.sim.world;

import java.util.List;

/**
 * How wet the ground is: rain fills a store at the surface, which drains.
 *
 * @param showers in any order
 */
public record Rain(List<Shower> showers) {

  /** Rain that soaks the ground, metres. */
  private static final double SOAKS_M = 0.03;

  /** Time constant of draining, seconds. */
  private static final double DRAINS_S = 24 * 3600;

  /** Copies the list. */
  public Rain {
    showers = List.copyOf(showers);
  }

  /** Wetness at a time in seconds: 0 dry, 1 soaked. */
  double wetness(double timeS) {
    double sum = 0;
    for (Shower shower : showers) {
      sum += shower.wetness(timeS);
    }
    return Math.min(1, sum);
  }

  /**
   * A shower.
   *
   * @param startS when it begins, seconds
   * @param lastsS how long it lasts, seconds, above 0
   * @param amountM how much falls in all, metres
   */
  public record Shower(double startS, double lastsS, double amountM) {

    /** Checks the figures. */
    public Shower {
      Check.above("lastsS", lastsS, 0);
      Check.atLeast("amountM", amountM, 0);
    }

    private double wetness(double timeS) {
      double sinceS = timeS - startS;
      if (sinceS <= 0) {
        return 0;
      }
      double rainedS = Math.min(sinceS, lastsS);
      double filled = amountM / SOAKS_M * DRAINS_S / lastsS * -Math.expm1(-rainedS / DRAINS_S);
      return filled * Math.exp(-(sinceS - rainedS) / DRAINS_S);
    }
  }
}
