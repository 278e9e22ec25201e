package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.Judgement;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;

/**
 * The verdict on a floor that may lie right at a limit: worse at once, but while parked better only
 * once it is better by a little more, or people who walk about would turn it over all day. While
 * arriving somebody acts on it, and it follows at once both ways.
 */
final class SteadyVerdict {

  /** What two people walking about do to the floor: our own figure. */
  private static final double DEADBAND_RAD = Math.toRadians(0.05);

  private final Coach coach;
  private Verdict said = Verdict.UNKNOWN;

  SteadyVerdict(Coach coach) {
    this.coach = coach;
  }

  Verdict round(FloorReading floor, VisitState state) {
    double toleranceRad = coach.levelling().toleranceRad(state.stay());
    Verdict now = of(floor, floor.lean(), toleranceRad);
    boolean better = said != Verdict.UNKNOWN && now.compareTo(said) < 0;
    if (better && state.phase() == Phase.PARKED) {
      Verdict cautious = of(floor, outwards(floor.lean()), toleranceRad);
      now = cautious.compareTo(said) < 0 ? cautious : said;
    }
    said = now;
    return now;
  }

  private Verdict of(FloorReading floor, Lean lean, double toleranceRad) {
    return Judgement.of(floor.state(), lean, toleranceRad, coach.fridges());
  }

  private static Lean outwards(Lean lean) {
    return new Lean(outwards(lean.rollRad()), outwards(lean.pitchRad()));
  }

  private static double outwards(double angleRad) {
    return angleRad + Math.copySign(DEADBAND_RAD, angleRad);
  }
}
