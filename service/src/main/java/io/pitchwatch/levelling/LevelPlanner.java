package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.AngleText;
import io.pitchwatch.levelling.Turning.Headings;
import io.pitchwatch.levelling.WheelPlanner.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Plans one site: wheels first, then jacks.
 *
 * <p>With jacks the blocks level side to side and the jacks front to back. Where the jacks could
 * not take the rest without breaking a limit, blocks go under both wheels of the low end as well;
 * where that does not help either, the plan is to move. Without jacks the blocks do all.
 */
public final class LevelPlanner {

  /** Less than this that the springs share is not worth a word (our own figure). */
  private static final double SHARED_RAD = Math.toRadians(0.05);

  private LevelPlanner() {}

  /** The plan with its alternatives and with what would change it. */
  public static Plan plan(Site site) {
    return plan(site, () -> Turning.around(site));
  }

  /** The same for a site whose headings are known. */
  public static Plan plan(Site site, Headings headings) {
    return plan(site, () -> headings);
  }

  /** A good plan needs no heading, and to plan for all of them takes long. */
  private static Plan plan(Site site, Supplier<Headings> headings) {
    Plan plan = planOnly(site);
    List<Reason> reasons = new ArrayList<>(plan.reasons());
    reasons.addAll(Remedies.of(plan, headings));
    return plan.with(reasons, Alternatives.of(plan));
  }

  /** The plan alone, which is a good deal faster. */
  public static Plan planOnly(Site site) {
    List<Reason> reasons = new ArrayList<>();
    if (Barrier.isAsked(site) && Barrier.piece(site) == Barrier.NONE) {
      reasons.add(
          new Reason(
              "no-barrier",
              "no sheet or board is there in number enough to lie under every tyre for a season;"
                  + " planned without"));
    }
    return site.coach().jackPairs().isEmpty()
        ? withoutJacks(site, reasons)
        : withJacks(site, reasons);
  }

  private static Plan withoutJacks(Site site, List<Reason> reasons) {
    WheelPlan wheels = wheels(site, Task.ALL);
    return done(
        site, wheels, new JackOutcome.Planned(List.of(), wheels.after(), List.of()), reasons);
  }

  private static Plan withJacks(Site site, List<Reason> reasons) {
    JackPlanner jacks = new JackPlanner(site.coach());
    WheelPlan wheels = wheels(site, Task.SIDES);
    JackOutcome outcome = jacks.plan(wheels);
    if (outcome instanceof JackOutcome.Planned planned) {
      return done(site, wheels, planned, reasons);
    }
    reasons.addAll(((JackOutcome.Refused) outcome).reasons());
    WheelPlanner planner = new WheelPlanner(site);
    Optional<WheelPlan> ends = planner.planFor(jacks);
    if (ends.isPresent() && jacks.plan(ends.get()) instanceof JackOutcome.Planned planned) {
      reasons.add(new Reason("low-end", "so blocks go under both wheels of the low end as well"));
      return done(site, ends.get(), planned, reasons);
    }
    if (!planner.isProof()) {
      reasons.add(notProven());
    }
    WheelPlan nothing = WheelPlan.nothing(site.lean(), site.toleranceRad());
    return new Plan(site, nothing, List.of(), site.lean(), PlanVerdict.MOVE, reasons, List.of());
  }

  private static WheelPlan wheels(Site site, Task task) {
    return new WheelPlanner(site)
        .plan(task)
        .orElseGet(() -> WheelPlan.nothing(site.lean(), site.toleranceRad()));
  }

  private static Plan done(
      Site site, WheelPlan wheels, JackOutcome.Planned jacks, List<Reason> reasons) {
    Lean after = jacks.after();
    double toleranceRad = site.toleranceRad();
    boolean roll = Excess.hundredths(Math.abs(after.rollRad()), toleranceRad) == 0;
    boolean pitch = Excess.hundredths(Math.abs(after.pitchRad()), toleranceRad) == 0;
    if (!roll) {
      reasons.add(remains("side to side", after.rollRad(), site, wheels.proven()));
    }
    if (!pitch) {
      reasons.add(remains("front to back", after.pitchRad(), site, wheels.proven()));
    }
    if (!wheels.proven()) {
      reasons.add(notProven());
    }
    springs(site, wheels).ifPresent(reasons::add);
    reasons.addAll(jacks.remarks());
    reasons.addAll(Bearing.remarks(site, wheels));
    PlanVerdict verdict = roll && pitch ? PlanVerdict.GOOD : PlanVerdict.BEST_POSSIBLE;
    return new Plan(site, wheels, jacks.moves(), after, verdict, reasons, List.of());
  }

  private static Reason notProven() {
    return new Reason(
        "not-proven",
        "so much is on board that not everything could be compared: there may be a better plan");
  }

  /** Where three axles are lifted by what no straight line goes through, their springs share it. */
  private static Optional<Reason> springs(Site site, WheelPlan wheels) {
    double sharedRad = WheelLifts.of(site.coach(), wheels.wheels()).sharedPitchRad();
    return Math.abs(sharedRad) <= SHARED_RAD
        ? Optional.empty()
        : Optional.of(
            new Reason(
                "springs",
                "the axles are lifted unevenly and their springs share it: the "
                    + (sharedRad > 0 ? "front" : "rear")
                    + " may come to rest "
                    + AngleText.of(Math.abs(sharedRad), 2)
                    + " lower than that; measure again after laying"));
  }

  private static Reason remains(String way, double rad, Site site, boolean proven) {
    return new Reason(
        "inventory",
        AngleText.of(Math.abs(rad), 2)
            + " "
            + way
            + " remains, more than the "
            + AngleText.of(site.toleranceRad(), 2)
            + " of this stay: "
            + (proven ? "what is on board allows no less" : "nothing less was found"));
  }
}
