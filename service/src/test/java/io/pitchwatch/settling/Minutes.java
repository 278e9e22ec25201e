package io.pitchwatch.settling;

/** Minutes for tests. */
final class Minutes {

  static final long MINUTE_NANOS = 60_000_000_000L;

  private Minutes() {}

  /** A quiet minute without a thermometer. */
  static MinuteValue at(long minute, double rollDeg, double pitchDeg) {
    return at(minute, rollDeg, pitchDeg, Double.NaN);
  }

  static MinuteValue at(long minute, double rollDeg, double pitchDeg, double temperatureC) {
    return new MinuteValue(
        minute * MINUTE_NANOS,
        Math.toRadians(rollDeg),
        Math.toRadians(pitchDeg),
        Math.toRadians(0.002),
        Math.toRadians(0.01),
        temperatureC,
        1,
        false);
  }

  static MinuteValue moved(long minute) {
    return new MinuteValue(
        minute * MINUTE_NANOS, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 0, true);
  }
}
