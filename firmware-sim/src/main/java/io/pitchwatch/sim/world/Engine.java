package io.pitchwatch.sim.world;

/**
 * The engine idling: a firing line with its overtones, wandering a little.
 *
 * <p>The share of each line along each axis follows a real bus at idle (main line near 32.5 Hz,
 * spread 12, 22, 19 mg along x, y, z; the first overtone carries most of x).
 *
 * @param startS when it starts, seconds
 * @param endS when it stops, seconds
 * @param lineHz the main line, Hz
 * @param levelG spread across the coach, standard deviation along y, g
 * @param seed of phases and wander
 */
record Engine(double startS, double endS, double lineHz, double levelG, long seed)
    implements Influence {

  private static final double TWO_PI = 2 * Math.PI;
  private static final double ROOT_TWO = Math.sqrt(2);
  private static final double WANDER = 0.004;
  private static final double WANDER_HZ = 0.11;

  /** Spread of each line along x, y, z, relative to the level. */
  private static final double[][] SHARES = {
    {0.10, 0.93, 0.72}, {0.46, 0.30, 0.13}, {0.20, 0.10, 0.12}
  };

  @Override
  public void add(double timeS, Sway sway) {
    // Phase is the integral of the wandering frequency.
    double slow = TWO_PI * WANDER_HZ;
    double turns = lineHz * timeS - lineHz * WANDER / slow * Math.cos(slow * timeS + seed % 7);
    for (int line = 0; line < SHARES.length; line++) {
      double hz = lineHz * (line + 1);
      double size = ROOT_TWO * levelG * sway.gain(hz);
      double phase = TWO_PI * (line + 1) * (turns % 1) - sway.lagRad(hz) + line;
      double sine = size * Math.sin(phase);
      double cosine = size * Math.cos(phase);
      double[] share = SHARES[line];
      sway.forwardG += share[0] * cosine;
      sway.leftG += share[1] * sine;
      sway.upG += share[2] * (0.8 * cosine + 0.6 * sine);
    }
  }
}
