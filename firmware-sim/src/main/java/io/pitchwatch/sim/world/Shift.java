package io.pitchwatch.sim.world;

/**
 * A lean that comes over a while and stays: a slide-out run out, water run from one tank to
 * another, a wheel that sinks.
 *
 * @param startS when it begins, seconds
 * @param endS until when it stays, seconds; infinity if for ever
 * @param overS how long it takes, seconds
 * @param course how it goes on the way
 * @param rollRad what it adds to roll, radians
 * @param pitchRad what it adds to pitch, radians
 */
record Shift(
    double startS, double endS, double overS, Course course, double rollRad, double pitchRad)
    implements Influence {

  /** The same, but gone from a time on, seconds. */
  Shift until(double timeS) {
    return new Shift(startS, timeS, overS, course, rollRad, pitchRad);
  }

  @Override
  public double steadyFromS() {
    return startS + overS;
  }

  @Override
  public void add(double timeS, Sway sway) {
    double done = course.at(timeS - startS, overS);
    sway.lean(done * rollRad, done * pitchRad);
  }
}
