package io.pitchwatch.sim.world;

/**
 * Under way from one rest to the next: pulling away, the road, braking.
 *
 * @param trip when and how fast
 * @param seed of the road
 * @param road its slopes and bends
 */
record Travel(Happenings.Trip trip, long seed, Road road) implements Influence {

  private static final double TWO_PI = 2 * Math.PI;
  private static final double PULL_AWAY_MPS2 = 0.9;
  private static final double FULL_ROUGHNESS_MPS = 12;
  private static final double ROUGHNESS_G = 0.05;
  private static final double ROAD_LEAN_RAD = Math.toRadians(1.3);
  private static final double BEND_G = 0.05;
  private static final double ROAD_PERIOD_S = 4;
  private static final double[] LINES_HZ = {1.1, 1.7, 2.6, 3.9, 6.1, 8.7, 11.3, 15.9};

  Travel(Happenings.Trip trip, long seed) {
    this(trip, seed, Road.of(seed));
  }

  @Override
  public double startS() {
    return trip.startS();
  }

  @Override
  public double endS() {
    return trip.endS();
  }

  @Override
  public void add(double timeS, Sway sway) {
    double pullS = trip.speedMps() / PULL_AWAY_MPS2;
    double pace =
        Ramp.smooth(timeS, trip.startS(), trip.startS() + pullS)
            * (1 - Ramp.smooth(timeS, trip.brakeS(), trip.endS()));
    double rough = pace * Math.min(1, 0.3 + trip.speedMps() / FULL_ROUGHNESS_MPS);
    double lean = rough * ROAD_LEAN_RAD;
    sway.lean(lean * road.camber().at(timeS), lean * road.grade().at(timeS));
    sway.leftG += rough * BEND_G * road.bends().at(timeS);
    sway.forwardG += along(timeS, pullS) + rough * BEND_G * road.pace().at(timeS);
    for (int i = 0; i < LINES_HZ.length; i++) {
      double phase = TWO_PI * (LINES_HZ[i] * timeS + SmoothNoise.uniform(seed, i));
      double size = rough * ROUGHNESS_G * sway.gain(LINES_HZ[i]);
      sway.upG += size * Math.sin(phase);
      sway.leftG += 0.5 * size * Math.sin(phase + 1 + i);
      sway.forwardG += 0.4 * size * Math.sin(phase + 2 + 2 * i);
    }
  }

  /** Acceleration along the road from the change of speed, g: speed follows the smooth ramps. */
  private double along(double timeS, double pullS) {
    double speed = trip.speedMps();
    if (timeS < trip.startS() + pullS) {
      return speed / pullS * bell((timeS - trip.startS()) / pullS) / Sway.G;
    }
    double brakingS = trip.endS() - trip.brakeS();
    if (timeS > trip.brakeS() && brakingS > 0) {
      return -speed / brakingS * bell((timeS - trip.brakeS()) / brakingS) / Sway.G;
    }
    return 0;
  }

  /** Derivative of 3u² − 2u³. */
  private static double bell(double u) {
    return u <= 0 || u >= 1 ? 0 : 6 * u * (1 - u);
  }

  /** The road's slopes and bends, and how evenly one drives on it. */
  record Road(SmoothNoise camber, SmoothNoise grade, SmoothNoise bends, SmoothNoise pace) {

    static Road of(long seed) {
      return new Road(
          new SmoothNoise(seed + 1, ROAD_PERIOD_S),
          new SmoothNoise(seed + 2, ROAD_PERIOD_S),
          new SmoothNoise(seed + 3, ROAD_PERIOD_S / 2),
          new SmoothNoise(seed + 4, ROAD_PERIOD_S));
    }
  }
}
