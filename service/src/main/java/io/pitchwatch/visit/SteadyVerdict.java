package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.Judgement;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;

/**
 * The verdict on a floor that may lie right at a limit. While arriving somebody acts on it, and it
 * follows at once both ways. While parked people walk about, and it turns over only with the mean
 * of some minutes, or with what they do not do for a minute on end; past a fridge's limit it turns
 * at once. A stay that asks for something else is answered at once.
 */
final class SteadyVerdict {

  /** What two people walking about do to the floor: our own figure. */
  private static final double DEADBAND_RAD = Math.toRadians(0.05);

  /** What five people do not do to it for a minute: our own figure. */
  private static final double CLEAR_RAD = Math.toRadians(0.1);

  private static final long CLEAR_NANOS = 60_000_000_000L;

  /** Time constant of the mean. */
  private static final double MEAN_NANOS = 300e9;

  private final Coach coach;
  private Verdict said = Verdict.UNKNOWN;
  private double toleranceRad;
  private Lean mean = Lean.LEVEL;
  private long lastNanos;
  private boolean clear;
  private long clearSinceNanos;

  SteadyVerdict(Coach coach) {
    this.coach = coach;
  }

  Verdict round(FloorReading floor, VisitState state, long nowNanos) {
    boolean parked = state.phase() == Phase.PARKED;
    if (parked && floor.state() == FloorState.MOVING) {
      // Wind and children do this; who drives off is no longer parked seconds later.
      return said;
    }
    double askedRad = coach.levelling().toleranceRad(state.stay());
    boolean asBefore = askedRad == toleranceRad;
    toleranceRad = askedRad;
    FloorState stands = floor.isAtRest() ? floor.state() : FloorState.UNKNOWN;
    Verdict now = Judgement.of(stands, floor.lean(), toleranceRad, coach.fridges());
    boolean anew = now == Verdict.UNKNOWN || said == Verdict.UNKNOWN || !asBefore;
    if (!parked || anew || now == Verdict.OUTSIDE) {
      mean = floor.lean();
      clear = false;
      said = now;
    } else {
      follow(floor.lean(), nowNanos);
      said = held(floor.lean(), nowNanos);
    }
    lastNanos = nowNanos;
    return said;
  }

  private void follow(Lean lean, long nowNanos) {
    double share = Math.min(1, (nowNanos - lastNanos) / MEAN_NANOS);
    mean =
        new Lean(
            mean.rollRad() + share * (lean.rollRad() - mean.rollRad()),
            mean.pitchRad() + share * (lean.pitchRad() - mean.pitchRad()));
  }

  private Verdict held(Lean lean, long nowNanos) {
    Verdict clearly = turned(lean, CLEAR_RAD, CLEAR_RAD);
    boolean begins = !clear;
    clear = clearly != said;
    if (clear && begins) {
      clearSinceNanos = nowNanos;
    }
    if (clear && nowNanos - clearSinceNanos >= CLEAR_NANOS) {
      mean = lean;
      clear = false;
      return clearly;
    }
    return turned(mean, DEADBAND_RAD, 0);
  }

  /** The other verdict that a lean amounts to even by so much more or less; else that of before. */
  private Verdict turned(Lean lean, double betterRad, double worseRad) {
    Verdict better = of(outwards(lean, betterRad));
    if (better.compareTo(said) < 0) {
      return better;
    }
    Verdict worse = of(outwards(lean, -worseRad));
    return worse.compareTo(said) > 0 ? worse : said;
  }

  private Verdict of(Lean lean) {
    return Judgement.of(FloorState.STEADY, lean, toleranceRad, coach.fridges());
  }

  private static Lean outwards(Lean lean, double byRad) {
    return new Lean(outwards(lean.rollRad(), byRad), outwards(lean.pitchRad(), byRad));
  }

  private static double outwards(double angleRad, double byRad) {
    return Math.copySign(Math.max(0, Math.abs(angleRad) + byRad), angleRad);
  }
}
