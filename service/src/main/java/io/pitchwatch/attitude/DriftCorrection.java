package io.pitchwatch.attitude;

/**
 * Takes the drift with temperature from what one sensor sees, as far as it is known: relative to
 * the temperature at which the sensor was zeroed, since the zero took all of it away that there was
 * then. Without a zero, or without a thermometer, nothing is taken away; without a thermometer what
 * the drift may be is claimed nevertheless.
 */
public final class DriftCorrection {

  /** As old as the steady mean is on average, so that both follow a warming chip alike. */
  private static final double MEMORY_NANOS = 30e9;

  private final double typicalPerC;
  private TemperatureDrift inChip;
  private TemperatureDrift inFloor;
  private Rotation chipToFloor = Rotation.IDENTITY;
  private double zeroC = Double.NaN;
  private double smoothC = Double.NaN;
  private double zeroAgeDays = Double.NaN;
  private long atNanos;

  /**
   * Nothing is known yet.
   *
   * @param typicalPerC drift that is typical of such chips along an axis in the floor, g/°C
   */
  public DriftCorrection(double typicalPerC) {
    this.typicalPerC = typicalPerC;
    this.inChip = TemperatureDrift.unknown(typicalPerC);
    this.inFloor = inChip;
  }

  /** Takes the chip's temperature, degrees Celsius; NaN where it is not known now. */
  public void temperature(double nowC, long nowNanos) {
    if (Double.isNaN(nowC) || Double.isNaN(smoothC)) {
      smoothC = nowC;
    } else {
      smoothC -= (nowC - smoothC) * Math.expm1(-(nowNanos - atNanos) / MEMORY_NANOS);
    }
    atNanos = nowNanos;
  }

  /** Takes in how long ago the sensor was zeroed, days; NaN where that is not known. */
  public void zeroAge(double days) {
    zeroAgeDays = days;
  }

  /** Takes in how the sensor is set up now. */
  public void use(Rotation nowChipToFloor, double nowZeroC) {
    chipToFloor = nowChipToFloor;
    zeroC = nowZeroC;
    inFloor = inChip.in(chipToFloor);
  }

  /** Takes in what was learnt, along the chip's axes. */
  public void know(TemperatureDrift drift) {
    inChip = drift;
    inFloor = drift.in(chipToFloor);
  }

  /** Takes in what was learnt, along the floor's axes. */
  public void learn(TemperatureDrift drift) {
    inFloor = drift;
    inChip = drift.in(chipToFloor.inverse());
  }

  /** Forgets what was learnt. */
  public void forget() {
    know(TemperatureDrift.unknown(typicalPerC));
  }

  /** What is known, along the chip's axes. */
  public TemperatureDrift inChip() {
    return inChip;
  }

  /** What is known, along the floor's axes: x forward, y left, z up. */
  public TemperatureDrift inFloor() {
    return inFloor;
  }

  /** The lean without the drift; NaN stays NaN. */
  public Lean corrected(Lean seen) {
    double warmerC = warmerC();
    return Double.isNaN(warmerC) || !inFloor.isLearnt() || !seen.isKnown()
        ? seen
        : inFloor.takenFrom(UpVector.of(seen), warmerC).lean();
  }

  /** One standard error of tilt, radians, that drift leaves after that. */
  public double errorRad() {
    if (Double.isNaN(smoothC)) {
      return typicalPerC * UnknownTemperature.spreadC(zeroAgeDays);
    }
    return Double.isNaN(zeroC) ? 0 : inFloor.errorRad(zeroC, smoothC, typicalPerC);
  }

  /** By how much the chip is warmer than when it was zeroed, °C; NaN when not known. */
  public double warmerC() {
    return smoothC - zeroC;
  }
}
