package io.pitchwatch.sim.world;

/**
 * People walking about: each step shakes the floor and rocks the body, and where people stand leans
 * it a little.
 *
 * @param startS when they begin, seconds
 * @param endS when they sit down again, seconds
 * @param people how many
 * @param leanRad lean of the coach when one person stands at its side, radians
 * @param seed of their steps and ways
 * @param across where they are, side to side
 * @param along where they are, front to back
 */
record Walking(
    double startS,
    double endS,
    int people,
    double leanRad,
    long seed,
    SmoothNoise across,
    SmoothNoise along)
    implements Influence {

  private static final double TWO_PI = 2 * Math.PI;
  private static final double STEP_HZ = 1.9;
  private static final double WAY_S = 7;
  private static final double BOUNCE_HZ = 3.1;
  private static final double ROCK_HZ = 1.4;
  private static final double DAMPING_S = 0.35;
  private static final double BOUNCE_G = 0.006;
  private static final int REMEMBERED_STEPS = 4;

  Walking(double startS, double endS, int people, double leanRad, long seed) {
    this(
        startS,
        endS,
        people,
        leanRad,
        seed,
        new SmoothNoise(seed + 1, WAY_S),
        new SmoothNoise(seed + 2, WAY_S));
  }

  @Override
  public void add(double timeS, Sway sway) {
    double many = Math.sqrt(people);
    double fade = Ramp.smooth(timeS, startS, startS + 1) * (1 - Ramp.smooth(timeS, endS - 1, endS));
    double side = across.at(timeS) * fade * many * leanRad;
    sway.lean(side, along.at(timeS) * fade * many * leanRad / 3);
    long step = (long) Math.floor((timeS - startS) * STEP_HZ);
    for (long k = step; k > step - REMEMBERED_STEPS && k >= 0; k--) {
      double sinceS = timeS - startS - (k + 0.3 * SmoothNoise.uniform(seed, k)) / STEP_HZ;
      if (sinceS > 0) {
        footfall(sinceS, k % 2 == 0 ? 1 : -1, many * fade, sway);
      }
    }
  }

  private void footfall(double sinceS, int foot, double size, Sway sway) {
    double ring = size * Math.exp(-sinceS / DAMPING_S);
    sway.upG += BOUNCE_G * ring * Math.sin(TWO_PI * BOUNCE_HZ * sinceS);
    double rock = Math.sin(TWO_PI * ROCK_HZ * sinceS);
    sway.rockSideways(0.3 * leanRad * ring * foot, ROCK_HZ, rock);
  }
}
