package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The planner beside an enumeration of every plan, on random coaches with a handful of pieces: 600,
 * or 20,000 with {@code -Dpitchwatch.full=true}; other ones with {@code -Dpitchwatch.seed=N}.
 */
class WheelPlannerPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 0);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 20_000 : 600;

  @Test
  void noPlanAtAllIsBetter() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      // Nine pieces under six stations are a matter of seconds; two of three coaches have fewer.
      Site site = new RandomSites(seed, 3, 4 + (int) (seed % 6)).next();
      boolean ends = WheelsAlone.ends(site);
      WheelPlan plan = WheelsAlone.plan(site);
      String where = "-Dpitchwatch.seed=" + seed + " " + site + " " + plan;

      assertEquals(List.of(), PlanInspection.faults(site, plan), where);
      WheelPlannerOracle.Best best = WheelPlannerOracle.best(site, ends);
      assertEquals(best.excessHundredths(), plan.excessHundredths(), where);
      assertEquals(best.pieces(), plan.pieces(), where);
      assertEquals(best.leanRad(), WheelsAlone.leanRad(plan, ends), 1e-9, where);
      assertEquals(best.tallestMm(), PlanInspection.tallestMm(plan), 1e-5, where);
    }
  }
}
