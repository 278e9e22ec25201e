package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The planner beside a general constraint solver (Choco) on the same random coaches: small ones;
 * with {@code -Dpitchwatch.full=true} also as many as {@code -Dpitchwatch.coaches=N} says, of up to
 * 8 kinds and 40 pieces, timed. Other ones with {@code -Dpitchwatch.seed=N}.
 */
class GeneralSolverPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 0);
  private static final int COACHES = 24;
  private static final int SECONDS = 20;

  @Test
  void findsTheSameOptimum() {
    int proven = 0;
    for (long seed = SEED; seed < SEED + COACHES; seed++) {
      Site site = new RandomSites(seed, 3, 4 + (int) (seed % 6)).next();
      boolean ends = WheelsAlone.ends(site);
      WheelPlan plan = WheelsAlone.plan(site);
      Optional<GeneralSolver.Best> best = new GeneralSolver(site, ends).solve(SECONDS);
      if (best.isPresent()) {
        proven++;
        assertTrue(
            best.orElseThrow().isMatchedBy(plan, ends),
            "-Dpitchwatch.seed=" + seed + ": " + best + " is not " + plan + " at " + site);
      }
    }
    assertTrue(proven > COACHES / 2, "the general solver proved only " + proven);
  }

  @Test
  @EnabledIfSystemProperty(named = "pitchwatch.full", matches = "true")
  void findsTheSameOptimumOfLargeOnesAHundredTimesAsFast() throws Exception {
    int coaches = Integer.getInteger("pitchwatch.coaches", 200);
    GeneralSolverRun run = GeneralSolverRun.over(SEED, coaches);
    assertEquals(0, run.different());
    assertTrue(run.ratio() > 100, "only " + run.ratio() + " times as fast");
  }
}
