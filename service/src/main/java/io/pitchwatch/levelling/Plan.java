package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import java.util.List;

/**
 * A levelling plan: what goes under the wheels, then what the jacks do.
 *
 * @param site what it is for
 * @param wheels what goes under the wheels; nothing in a plan to move
 * @param jacks in their order; empty without jacks
 * @param after the lean when all is done, radians
 * @param verdict how good that is
 * @param reasons why, and what would change it
 * @param alternatives other plans for the same site, best first; they have none themselves
 */
public record Plan(
    Site site,
    WheelPlan wheels,
    List<JackMove> jacks,
    Lean after,
    PlanVerdict verdict,
    List<Reason> reasons,
    List<Alternative> alternatives) {

  /** Copies the lists. */
  public Plan {
    jacks = List.copyOf(jacks);
    reasons = List.copyOf(reasons);
    alternatives = List.copyOf(alternatives);
  }

  /**
   * Another plan for the same site.
   *
   * @param without the kind of piece that it does without
   * @param plan the plan
   */
  public record Alternative(String without, Plan plan) {}

  Plan with(List<Reason> otherReasons, List<Alternative> others) {
    return new Plan(site, wheels, jacks, after, verdict, otherReasons, others);
  }
}
