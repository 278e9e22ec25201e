package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.levelling.WheelPlanner.PitchRange;
import io.pitchwatch.levelling.WheelPlanner.Task;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The planner beside a general constraint solver (Choco) on the same random coaches, timed in the
 * same run: 24 small ones; with {@code -Dpitchwatch.full=true} as many as {@code
 * -Dpitchwatch.coaches=N} says, with up to 8 kinds and 40 pieces, each for at most {@code
 * -Dpitchwatch.seconds=S}. Other ones with {@code -Dpitchwatch.seed=N}.
 */
class GeneralSolverPropertyTest {

  private static final boolean FULL = Boolean.getBoolean("pitchwatch.full");
  private static final long SEED = Long.getLong("pitchwatch.seed", 0);
  private static final int COACHES = FULL ? Integer.getInteger("pitchwatch.coaches", 200) : 24;
  private static final int SECONDS = Integer.getInteger("pitchwatch.seconds", 20);

  @Test
  void findsTheSameOptimum() {
    warm();
    double[] oursMs = new double[COACHES];
    double[] generalMs = new double[COACHES];
    int proven = 0;
    for (int i = 0; i < COACHES; i++) {
      Site site = site(SEED + i);
      long start = System.nanoTime();
      WheelPlan plan = plan(site);
      oursMs[i] = (System.nanoTime() - start) / 1e6;
      start = System.nanoTime();
      Optional<GeneralSolver.Best> best = new GeneralSolver(site, ends(site)).solve(SECONDS);
      generalMs[i] = (System.nanoTime() - start) / 1e6;
      if (best.isPresent()) {
        proven++;
        compare(best.orElseThrow(), plan, "-Dpitchwatch.seed=" + (SEED + i) + " " + site);
      }
    }
    System.out.println(figures("planner", oursMs));
    System.out.println(figures("general solver", generalMs));
    System.out.printf(
        Locale.ROOT,
        "coaches %d, proven by both %d, ratio of medians %.0f, of sums %.0f%n",
        COACHES,
        proven,
        middle(generalMs) / middle(oursMs),
        Arrays.stream(generalMs).sum() / Arrays.stream(oursMs).sum());
    assertTrue(proven > 0, "the general solver proved nothing within " + SECONDS + " s each");
    // With a handful of pieces the general solver has next to nothing to do.
    assertTrue(
        !FULL || Arrays.stream(generalMs).sum() > 100 * Arrays.stream(oursMs).sum(),
        "not a hundred times as fast over all coaches");
  }

  private static void compare(GeneralSolver.Best best, WheelPlan plan, String where) {
    boolean ends = where.contains("jackPairs=[]");
    double roll = Math.abs(plan.after().rollRad());
    double leanRad = ends ? Math.max(roll, Math.abs(plan.after().pitchRad())) : roll;
    assertEquals(best.excessHundredths(), plan.excessHundredths(), where);
    assertEquals(best.pieces(), plan.pieces(), where);
    // The model rounds each arctangent to 1e-8 rad.
    assertEquals(best.leanRad(), leanRad, 3e-8, where);
    if (Math.abs(best.leanRad() - leanRad) < 1e-9) {
      assertTrue(PlanInspection.tallestMm(plan) <= best.tallestMm() + 0.01, where);
    }
  }

  private static Site site(long seed) {
    return FULL
        ? new RandomSites(seed, 8, 40).next()
        : new RandomSites(seed, 3, 4 + (int) (seed % 6)).next();
  }

  private static boolean ends(Site site) {
    return site.coach().jackPairs().isEmpty();
  }

  private static WheelPlan plan(Site site) {
    Task task = ends(site) ? Task.ALL : Task.SIDES;
    return new WheelPlanner(site).plan(task, PitchRange.ANY, plan -> true).orElseThrow();
  }

  /** Both are compiled before they are timed. */
  private static void warm() {
    for (int i = 0; i < 300; i++) {
      plan(new RandomSites(1_000_000 + i, 6, 25).next());
    }
    for (int i = 0; i < 5; i++) {
      Site site = new RandomSites(1_000_000 + i, 3, 6).next();
      assertTrue(new GeneralSolver(site, ends(site)).solve(SECONDS).isPresent());
    }
  }

  private static double middle(double[] values) {
    return Arrays.stream(values).sorted().toArray()[values.length / 2];
  }

  private static String figures(String what, double[] values) {
    double[] ms = Arrays.stream(values).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "%-15s p50 %.3f ms  p99 %.2f ms  worst %.2f ms",
        what,
        ms[ms.length / 2],
        ms[(int) (ms.length * 0.99)],
        ms[ms.length - 1]);
  }
}
