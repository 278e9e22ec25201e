package io.pitchwatch.alarms;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.AngleText;

/** The floor leans more than the stay allows, and by more than a sensor may feign. */
final class FloorAlarm implements AlarmSource {

  private static final AlarmRule RULE =
      new AlarmRule(
          "floor",
          Priority.LOW,
          Times.minutes(15),
          Times.minutes(15),
          Math.toRadians(0.05),
          false,
          true);

  private final LeanWords words;

  FloorAlarm(LeanWords words) {
    this.words = words;
  }

  @Override
  public AlarmRule rule() {
    return RULE;
  }

  @Override
  public double excess(Situation situation) {
    return situation.lean().largestRad() - situation.toleranceRad() - situation.leanDoubtRad();
  }

  @Override
  public AlarmText text(Situation situation) {
    Lean lean = situation.lean();
    String allowed = AngleText.of(situation.toleranceRad(), 2);
    return new AlarmText(
        "The floor leans more than this stay allows",
        Double.isNaN(excess(situation))
            ? "The lean is not known at present; allowed is " + allowed + "."
            : "It is "
                + words.both(lean.rollRad(), lean.pitchRad())
                + "; allowed is "
                + allowed
                + ".",
        "Level the coach again when it suits, or choose a stay that asks for less.");
  }
}
