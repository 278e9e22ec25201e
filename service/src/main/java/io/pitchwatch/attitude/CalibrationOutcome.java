package io.pitchwatch.attitude;

/** What came of a try to calibrate. */
public sealed interface CalibrationOutcome {

  /** It is good. */
  record Fitted(Calibration calibration) implements CalibrationOutcome {}

  /**
   * There are too few poses.
   *
   * @param poses how many there are
   * @param needed how many there must be
   */
  record TooFew(int poses, int needed) implements CalibrationOutcome {}

  /**
   * The poses lie too near each other on the sphere to tell bias, scale and misalignment apart.
   *
   * @param missing the way farthest from every pose
   * @param gapRad by how much, radians
   */
  record Clustered(Facing missing, double gapRad) implements CalibrationOutcome {}

  /**
   * One pose does not fit with all others: the chip moved while it was taken.
   *
   * @param pose which, counted from 0
   * @param byG by how much |a| misses 1 g there, g
   */
  record Misfit(int pose, double byG) implements CalibrationOutcome {}

  /** The poses are no chip's: nothing near an ellipsoid goes through them. */
  record NoFit() implements CalibrationOutcome {}
}
