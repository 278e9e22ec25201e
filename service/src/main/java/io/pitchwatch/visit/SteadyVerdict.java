package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.Judgement;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;

/**
 * The verdict on a floor that may lie right at a limit: worse at once, but while parked better only
 * once it has been better by a little more for a minute, or people who walk about would turn it
 * over all day. While arriving somebody acts on it, and it follows at once both ways.
 */
final class SteadyVerdict {

  /** What two people walking about do to the floor: our own figure. */
  private static final double DEADBAND_RAD = Math.toRadians(0.05);

  private static final long HOLD_NANOS = 60_000_000_000L;

  private final Coach coach;
  private Verdict said = Verdict.UNKNOWN;
  private boolean mends;
  private long mendsSinceNanos;

  SteadyVerdict(Coach coach) {
    this.coach = coach;
  }

  Verdict round(FloorReading floor, VisitState state, long nowNanos) {
    double toleranceRad = coach.levelling().toleranceRad(state.stay());
    Verdict now = of(floor, floor.lean(), toleranceRad);
    if (said != Verdict.UNKNOWN && now.compareTo(said) < 0 && state.phase() == Phase.PARKED) {
      now = held(of(floor, outwards(floor.lean()), toleranceRad), nowNanos);
    } else {
      mends = false;
    }
    said = now;
    return now;
  }

  private Verdict held(Verdict cautious, long nowNanos) {
    boolean better = cautious.compareTo(said) < 0;
    if (better && !mends) {
      mendsSinceNanos = nowNanos;
    }
    mends = better;
    return better && nowNanos - mendsSinceNanos >= HOLD_NANOS ? cautious : said;
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
