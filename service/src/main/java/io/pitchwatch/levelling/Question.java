package io.pitchwatch.levelling;

import java.util.function.Predicate;

/**
 * What is asked of a search.
 *
 * @param rollRad to be undone by the wheels, 0 or more
 * @param pitchRad of the floor
 * @param toleranceRad of the stay
 * @param twistRad most that two axles' turns may differ
 * @param pitchCounts whether the larger of roll and pitch is what counts, or roll alone
 * @param limits of lifts, where ends are lifted
 * @param pitchFromRad least pitch that may remain
 * @param pitchToRad most pitch that may remain
 * @param accept asked last of what would be the best so far
 */
record Question(
    double rollRad,
    double pitchRad,
    double toleranceRad,
    double twistRad,
    boolean pitchCounts,
    Limits limits,
    double pitchFromRad,
    double pitchToRad,
    Predicate<Find> accept) {

  /** Whether ends are lifted against each other, and not only sides. */
  boolean movesEnds() {
    return pitchCounts || Double.isFinite(pitchFromRad);
  }

  /**
   * Most lean of interest: that of nothing laid. Where ends have to be lifted for the jacks' sake,
   * also one inside the tolerance.
   */
  double mostRad() {
    double before = lean(rollRad, pitchRad);
    return movesEnds() && !pitchCounts
        ? Math.max(before, Excess.leanBelowRad(1, toleranceRad))
        : before;
  }

  Reach.Terms terms() {
    return new Reach.Terms(rollRad, twistRad, movesEnds(), limits);
  }

  double lean(double roll, double pitch) {
    return pitchCounts ? Math.max(Math.abs(roll), Math.abs(pitch)) : Math.abs(roll);
  }
}
