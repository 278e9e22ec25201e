package io.pitchwatch.attitude;

/**
 * All that was found out about one sensor at its place, each part dated: what turns the chip's
 * samples into the coach's axes.
 *
 * @param calibration raw samples to true ones
 * @param zero how the board leans against the floor
 * @param alignment how the board is turned about the vertical
 */
public record SensorSetup(Calibration calibration, Zero zero, Alignment.Found alignment) {

  /** Nothing was found out yet: chip and mounting are believed as declared. */
  public static final SensorSetup NONE =
      new SensorSetup(Calibration.NONE, Zero.NONE, Alignment.Found.NONE);

  /** The same with another zero; a heading found before stays. */
  public SensorSetup with(Zero next) {
    return new SensorSetup(calibration, next, alignment);
  }

  /** The same with another heading. */
  public SensorSetup with(Alignment.Found next) {
    return new SensorSetup(calibration, zero, next);
  }

  /** Calibrated anew: the board was off its seat for that, so that zero and heading are gone. */
  public SensorSetup with(Calibration next) {
    return new SensorSetup(next, Zero.NONE, Alignment.Found.NONE);
  }

  /** Takes calibrated components along the chip's axes to components along the coach's. */
  public Rotation chipToFloor(Mounting mounting) {
    return mountedToFloor().after(mounting.chipToCoach());
  }

  /** Takes components as the declared mounting gives them to components along the coach's axes. */
  public Rotation mountedToFloor() {
    return alignment.rotation().after(zero.rotation());
  }

  /**
   * One standard error, radians, that all of this leaves however long one averages: the zero's, or
   * without a zero the calibration's; and the heading's, which turns a share of the lean.
   *
   * @param lean how the floor leans; not known: NaN
   */
  public double standardErrorRad(Lean lean) {
    double zeroRad =
        zero.equals(Zero.NONE) ? calibration.standardErrorRad() : zero.standardErrorRad();
    double leanRad = Math.hypot(lean.rollRad(), lean.pitchRad());
    double crossRad = Double.isNaN(leanRad) ? 0 : leanRad * alignment.standardErrorRad();
    return Math.hypot(zeroRad, crossRad);
  }
}
