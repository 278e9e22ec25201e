package io.pitchwatch.alarms;

import io.pitchwatch.coach.AngleText;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.comfort.FridgeWatch;

/** A fridge stands outside its limits. */
final class FridgeAlarm implements AlarmSource {

  private static final double DEADBAND_RAD = Math.toRadians(0.1);

  private final int index;
  private final String name;
  private final AlarmRule rule;
  private final LeanWords words;

  /**
   * An alarm for one fridge.
   *
   * @param index its place in the coach
   */
  FridgeAlarm(int index, Fridge fridge, LeanWords words) {
    this.index = index;
    this.name = fridge.id();
    this.words = words;
    this.rule =
        new AlarmRule(
            "fridge-" + name,
            Priority.URGENT,
            Times.minutes(2),
            Times.minutes(10),
            DEADBAND_RAD,
            true,
            true);
  }

  @Override
  public AlarmRule rule() {
    return rule;
  }

  @Override
  public double excess(Situation situation) {
    return -situation.fridges().get(index).marginRad();
  }

  @Override
  public AlarmText text(Situation situation) {
    FridgeWatch fridge = situation.fridges().get(index);
    double margin = fridge.marginRad();
    String state =
        Double.isNaN(margin)
            ? "The lean is not known at present"
            : margin < 0
                ? AngleText.of(-margin, 2) + " too far"
                : "Back inside by " + AngleText.of(margin, 2);
    String lean =
        Double.isNaN(margin)
            ? ""
            : ": " + words.both(situation.lean().rollRad(), situation.lean().pitchRad());
    return new AlarmText(
        "Fridge " + name + " leans past its limit",
        state + lean + "; " + Math.round(fridge.outsideMinutes()) + " min outside since parking.",
        "Level the coach, or switch the fridge off until it is level.");
  }
}
