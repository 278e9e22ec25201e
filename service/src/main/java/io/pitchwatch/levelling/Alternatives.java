package io.pitchwatch.levelling;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.levelling.Plan.Alternative;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Other plans for the same site: for each kind of piece that the plan uses, the best plan that does
 * without it, as long as that is no worse a floor. Each is optimal for what it may use.
 */
final class Alternatives {

  private static final int MOST = 3;

  private Alternatives() {}

  static List<Alternative> of(Plan plan) {
    List<Alternative> others = new ArrayList<>();
    if (plan.verdict() == PlanVerdict.MOVE) {
      return others;
    }
    for (Piece piece : plan.site().coach().pieces()) {
      if (plan.wheels().piecesOf(piece.id()) == 0) {
        continue;
      }
      Plan other = LevelPlanner.planOnly(plan.site().with(without(plan.site().coach(), piece)));
      if (isAsGood(other, plan)
          && others.stream()
              .noneMatch(o -> o.plan().wheels().wheels().equals(other.wheels().wheels()))) {
        others.add(new Alternative(piece.id(), other));
      }
    }
    others.sort(
        Comparator.<Alternative>comparingLong(o -> o.plan().wheels().excessHundredths())
            .thenComparingInt(o -> o.plan().wheels().pieces())
            .thenComparingDouble(o -> Math.abs(o.plan().wheels().after().rollRad())));
    return others.subList(0, Math.min(MOST, others.size()));
  }

  private static boolean isAsGood(Plan other, Plan plan) {
    return other.verdict() != PlanVerdict.MOVE
        && other.wheels().pieces() > 0
        && other.wheels().excessHundredths() <= plan.wheels().excessHundredths();
  }

  private static Coach without(Coach coach, Piece piece) {
    return Remedies.with(coach, piece, 0);
  }
}
