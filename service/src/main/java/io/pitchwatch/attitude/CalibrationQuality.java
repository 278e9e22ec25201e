package io.pitchwatch.attitude;

/**
 * How good a {@link Calibration} is.
 *
 * @param scaleError one standard error of each scale, same unit
 * @param misalignmentError one standard error of each misalignment, radians
 * @param biasError one standard error of each bias, raw units
 * @param beforeG root mean square of |a| − 1 g over the poses, before, g
 * @param afterG the same with the calibration, g
 * @param poses how many poses it rests on
 */
public record CalibrationQuality(
    Triad scaleError,
    Triad misalignmentError,
    Triad biasError,
    double beforeG,
    double afterG,
    int poses) {

  /** Nothing was measured. */
  public static final CalibrationQuality NONE =
      new CalibrationQuality(Triad.ZERO, Triad.ZERO, Triad.ZERO, 0, 0, 0);
}
