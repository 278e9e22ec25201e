package io.pitchwatch.levelling;

import io.pitchwatch.levelling.WheelPlanner.Task;

/** The wheels' part of a plan by itself, as it is compared with what others find. */
final class WheelsAlone {

  private WheelsAlone() {}

  /** Whether blocks have to level the ends too, for there are no jacks. */
  static boolean ends(Site site) {
    return site.coach().jackPairs().isEmpty();
  }

  static WheelPlan plan(Site site) {
    Task task = ends(site) ? Task.ALL : Task.SIDES;
    return new WheelPlanner(site).plan(task).orElseThrow();
  }

  /** What of the lean that remains counts, radians. */
  static double leanRad(WheelPlan plan, boolean ends) {
    double roll = Math.abs(plan.after().rollRad());
    return ends ? Math.max(roll, Math.abs(plan.after().pitchRad())) : roll;
  }
}
