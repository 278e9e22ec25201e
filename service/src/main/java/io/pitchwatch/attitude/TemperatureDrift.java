package io.pitchwatch.attitude;

/**
 * How a chip's zero-g offset drifts with its temperature; plain numbers, so that they can be kept.
 *
 * <p>Only what lies square to up is seen while the chip stands, and only that makes a false lean:
 * near level a g of offset is a radian of tilt. The axes are the chip's own where it is kept, the
 * floor's where it is learnt; {@link #in} takes it from one to the other.
 *
 * @param perC change of the offset along each axis, g/°C
 * @param errorPerC one standard error of its components, g/°C
 * @param lowC coldest temperature at which it was learnt, degrees Celsius; NaN when it is not
 * @param highC warmest; NaN likewise
 */
public record TemperatureDrift(Triad perC, double errorPerC, double lowC, double highC) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the drift is not finite, or the error negative or NaN
   */
  public TemperatureDrift {
    if (!perC.isFinite() || !(errorPerC >= 0)) {
      throw new IllegalArgumentException(
          "drift is " + perC + " within " + errorPerC + "; it must be finite, the error 0 or more");
    }
  }

  /** Nothing was learnt yet of a chip that typically drifts by so much, g/°C. */
  public static TemperatureDrift unknown(double typicalPerC) {
    return new TemperatureDrift(Triad.ZERO, typicalPerC, Double.NaN, Double.NaN);
  }

  /**
   * What was learnt of a chip along the floor's axes, near level.
   *
   * @param rollPerC by how much roll drifts, rad/°C
   * @param pitchPerC by how much pitch drifts, rad/°C
   * @param errorPerC one standard error of each, rad/°C
   * @param lowC coldest temperature at which it was learnt, degrees Celsius
   * @param highC warmest
   */
  public static TemperatureDrift ofFloor(
      double rollPerC, double pitchPerC, double errorPerC, double lowC, double highC) {
    return new TemperatureDrift(new Triad(-pitchPerC, rollPerC, 0), errorPerC, lowC, highC);
  }

  /**
   * By how much roll drifts near level, along the floor's axes, rad/°C: as an offset to the left.
   */
  public double rollPerC() {
    return perC.y();
  }

  /** By how much pitch drifts near level, rad/°C: an offset forward is seen as a front too high. */
  public double pitchPerC() {
    return -perC.x();
  }

  /** Whether anything was learnt. */
  public boolean isLearnt() {
    return lowC <= highC;
  }

  /** The same along other axes. */
  public TemperatureDrift in(Rotation toThem) {
    double[] turned = new double[3];
    toThem.apply(perC.x(), perC.y(), perC.z(), turned);
    return new TemperatureDrift(new Triad(turned[0], turned[1], turned[2]), errorPerC, lowC, highC);
  }

  /**
   * What the sensor would see without it.
   *
   * @param seen up, along the same axes
   * @param warmerC by how much the chip is warmer than when it was right, °C
   */
  public UpVector takenFrom(UpVector seen, double warmerC) {
    return UpVector.of(
        seen.x() - warmerC * perC.x(),
        seen.y() - warmerC * perC.y(),
        seen.z() - warmerC * perC.z());
  }

  /**
   * One standard error of what {@link #takenFrom} takes away, radians. Where nothing was learnt the
   * chip may drift by what is typical of its kind, whatever it does elsewhere.
   *
   * @param fromC where the sensor was right, degrees Celsius
   * @param toC where it is now
   * @param typicalPerC drift that is typical of such chips, g/°C
   */
  public double errorRad(double fromC, double toC, double typicalPerC) {
    double low = Math.min(fromC, toC);
    double high = Math.max(fromC, toC);
    double learnt = isLearnt() ? Math.max(0, Math.min(high, highC) - Math.max(low, lowC)) : 0;
    return errorPerC * learnt + Math.max(errorPerC, typicalPerC) * (high - low - learnt);
  }
}
