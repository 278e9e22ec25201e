package io.pitchwatch.alarms;

import io.pitchwatch.coach.AngleText;
import io.pitchwatch.coach.Coach;

/** The frame is twisted, one end against the other. */
final class TwistAlarm implements AlarmSource {

  private static final AlarmRule RULE =
      new AlarmRule(
          "twist",
          Priority.HIGH,
          Times.minutes(1),
          Times.minutes(5),
          Math.toRadians(0.02),
          false,
          true);

  private final double limitRad;

  TwistAlarm(Coach coach) {
    limitRad = coach.levelling().twistRad();
  }

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return Math.abs(situation.twistRad()) - limitRad;
  }

  @Override
  public AlarmText text(Situation situation) {
    return new AlarmText(
        "The frame is twisted",
        "By "
            + AngleText.of(Math.abs(situation.twistRad()), 2)
            + "; at most "
            + AngleText.of(limitRad, 2)
            + " is allowed.",
        "Leave slide-outs where they are; ease the jack or the stack that lifts one corner.");
  }
}
