package io.pitchwatch.settling;

/** One block of one angle, filled anew each time so that nothing is allocated. */
final class AxisBlock {

  /** Monotonic time of its middle. */
  long nanos;

  /** The angle, events taken out. */
  double angleRad;

  /** Of the noise of the mean. */
  double varianceRad2;

  /** How far people and wind took the floor, one standard deviation. */
  double busyRad;

  /** Above the temperature at the start. */
  double warmerC;

  /** How much less well the level is known for the events since the block before. */
  double loosenRad;
}
