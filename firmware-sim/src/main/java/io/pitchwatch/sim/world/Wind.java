package io.pitchwatch.sim.world;

/**
 * Wind from the side: a steady push and gusts that rock the body on its springs at 0.3 to 2 Hz.
 *
 * @param startS when it rises, seconds
 * @param endS when it has died down, seconds
 * @param rockRad standard deviation of the rocking in the strongest gusts, radians
 * @param seed of gusts and phases
 * @param gusts how the gusts come and go
 */
record Wind(double startS, double endS, double rockRad, long seed, SmoothNoise gusts)
    implements Influence {

  private static final double TWO_PI = 2 * Math.PI;
  private static final double[] LINES_HZ = {0.31, 0.52, 0.83, 1.21, 1.74};
  private static final double[] SHARES = {0.55, 0.60, 0.45, 0.30, 0.15};
  private static final double GUST_S = 9;
  private static final double RISE_S = 30;

  Wind(double startS, double endS, double rockRad, long seed) {
    this(startS, endS, rockRad, seed, new SmoothNoise(seed, GUST_S));
  }

  @Override
  public void add(double timeS, Sway sway) {
    double rise =
        Ramp.smooth(timeS, startS, startS + RISE_S) * (1 - Ramp.smooth(timeS, endS - RISE_S, endS));
    double gust = rise * Math.max(0, 0.6 + 0.4 * gusts.at(timeS));
    sway.lean(0.5 * rockRad * gust, 0);
    for (int i = 0; i < LINES_HZ.length; i++) {
      double phase = TWO_PI * (LINES_HZ[i] * timeS + SmoothNoise.uniform(seed, i));
      double size = Math.sqrt(2) * SHARES[i] * rockRad * gust;
      sway.rockSideways(size, LINES_HZ[i], Math.sin(phase));
      sway.rockLengthways(size / 4, LINES_HZ[i], Math.cos(phase));
    }
  }
}
