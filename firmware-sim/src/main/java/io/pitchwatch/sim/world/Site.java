package io.pitchwatch.sim.world;

/**
 * Where a coach stands.
 *
 * @param ground how it lies and what it gives at once
 * @param soil how it goes on sinking
 * @param uneven how much weaker or stronger than usual the soil may be under one wheel, as a share,
 *     0 to 1; drawn anew for each stand
 */
public record Site(Ground ground, Soil soil, double uneven) {

  /** A usual spread. */
  public static final double USUALLY_UNEVEN = 0.4;

  /** Checks the share. */
  public Site {
    if (!(uneven >= 0 && uneven <= 1)) {
      throw new IllegalArgumentException("uneven is " + uneven + "; 0 to 1 is allowed");
    }
  }
}
