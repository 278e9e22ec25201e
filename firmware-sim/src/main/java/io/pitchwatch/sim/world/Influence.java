package io.pitchwatch.sim.world;

/** One thing that moves the coach for a while, as a function of time alone. */
interface Influence {

  /** When it begins, seconds of scenario time. */
  double startS();

  /** When it is over, seconds; infinity if it stays. */
  double endS();

  /**
   * From when on it stands still at what it then does, seconds; infinity if it never does. What
   * stands still is not computed again for every sample.
   */
  default double steadyFromS() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Adds what it does at an instant between start and end.
   *
   * @param timeS scenario time, seconds
   * @param sway receives it
   */
  void add(double timeS, Sway sway);
}
