package io.pitchwatch.alarms;

/** Something speaks against the zero: another temperature than then, or a sensor that was moved. */
final class ZeroDoubtAlarm implements AlarmSource {

  private static final AlarmRule RULE =
      new AlarmRule(
          "zero-doubtful", Priority.MEDIUM, Times.minutes(30), Times.minutes(60), 0, false, true);

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return situation.zeroDoubt().isEmpty() ? -1 : 1;
  }

  @Override
  public AlarmText text(Situation situation) {
    return new AlarmText(
        "The sensor's zero may not hold any more",
        situation.zeroDoubt().isEmpty()
            ? "Nothing speaks against it at present."
            : sentence(situation.zeroDoubt()),
        "Check the floor with a trusted level, and zero the sensor again if they differ.");
  }

  private static String sentence(String doubt) {
    return Character.toUpperCase(doubt.charAt(0)) + doubt.substring(1) + ".";
  }
}
