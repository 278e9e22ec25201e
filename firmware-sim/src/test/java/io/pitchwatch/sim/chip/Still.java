package io.pitchwatch.sim.chip;

/** A place where nothing moves. */
record Still(double x, double y, double z, double temperature) implements Surroundings {

  static final Still FLAT = new Still(0, 0, 1, Part.REFERENCE_C);

  @Override
  public void specificForce(long nanos, double cornerHz, double[] outG) {
    outG[0] = x;
    outG[1] = y;
    outG[2] = z;
  }

  @Override
  public double temperatureC(long nanos) {
    return temperature;
  }
}
