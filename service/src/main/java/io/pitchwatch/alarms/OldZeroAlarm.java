package io.pitchwatch.alarms;

/** The sensor was zeroed long ago. */
final class OldZeroAlarm implements AlarmSource {

  /** Half a year: our own figure. */
  static final double OLD_DAYS = 180;

  private static final AlarmRule RULE =
      new AlarmRule("zero-old", Priority.LOW, Times.minutes(60), Times.minutes(1), 0, false, true);

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return situation.zeroAgeDays() - OLD_DAYS;
  }

  @Override
  public AlarmText text(Situation situation) {
    return new AlarmText(
        "The sensor was zeroed long ago",
        Double.isNaN(situation.zeroAgeDays())
            ? "How long ago is not known at present."
            : Math.round(situation.zeroAgeDays()) + " days ago.",
        "Check the floor with a trusted level, and zero the sensor again.");
  }
}
