package io.pitchwatch.settling;

/** Up to ten minutes taken together: what the settling filter sees at once. */
final class Block {

  static final long LENGTH_NANOS = 600_000_000_000L;
  static final double LENGTH_HOURS = LENGTH_NANOS / 3.6e12;

  private double sumRollRad;
  private double sumPitchRad;
  private double sumVariance;
  private double sumSpread2;
  private double sumTemperatureC;
  private int temperatures;
  private double sumNanos;
  private long beginNanos;
  private int count;

  boolean isEmpty() {
    return count == 0;
  }

  /** Whether a minute is too late to belong here. */
  boolean endsBefore(MinuteValue minute) {
    return count > 0 && minute.atNanos() - beginNanos >= LENGTH_NANOS;
  }

  void add(MinuteValue minute) {
    if (count == 0) {
      beginNanos = minute.atNanos();
    }
    sumRollRad += minute.rollRad();
    sumPitchRad += minute.pitchRad();
    sumVariance += known2(minute.uncertaintyRad());
    sumSpread2 += known2(minute.spreadRad());
    if (!Double.isNaN(minute.temperatureC())) {
      sumTemperatureC += minute.temperatureC();
      temperatures++;
    }
    sumNanos += minute.atNanos() - beginNanos;
    count++;
  }

  void clear() {
    sumRollRad = 0;
    sumPitchRad = 0;
    sumVariance = 0;
    sumSpread2 = 0;
    sumTemperatureC = 0;
    temperatures = 0;
    sumNanos = 0;
    count = 0;
  }

  double angleRad(LeanAxis axis) {
    return (axis == LeanAxis.ROLL ? sumRollRad : sumPitchRad) / count;
  }

  /** Variance of the mean from the minutes' own noise, rad². */
  double varianceRad2() {
    return sumVariance / ((double) count * count);
  }

  double spreadRad() {
    return Math.sqrt(sumSpread2 / count);
  }

  /** NaN where no minute knew its temperature. */
  double temperatureC() {
    return temperatures == 0 ? Double.NaN : sumTemperatureC / temperatures;
  }

  long meanNanos() {
    return beginNanos + (long) (sumNanos / count);
  }

  /** The square; what a minute does not know adds nothing. */
  private static double known2(double value) {
    return Double.isNaN(value) ? 0 : value * value;
  }
}
