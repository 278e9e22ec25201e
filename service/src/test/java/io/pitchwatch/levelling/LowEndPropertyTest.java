package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.levelling.WheelPlanner.Task;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Blocks under the low end for the jacks' sake, beside an enumeration of every plan, each put to
 * the jacks, on random coaches with a handful of pieces: 1,500, or 40,000 with {@code
 * -Dpitchwatch.full=true}; other ones with {@code -Dpitchwatch.seed=N}.
 */
class LowEndPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 0);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 40_000 : 1500;

  private int refused;
  private int helped;

  @Test
  void noPlanThatTheJacksTakeIsBetter() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      Site site = new RandomSites(seed, 3, 4 + (int) (seed % 5)).next(2 + (int) (seed % 2), true);
      JackPlanner jacks = new JackPlanner(site.coach());
      WheelPlan sides = new WheelPlanner(site).plan(Task.SIDES).orElseThrow();
      if (jacks.plan(sides) instanceof JackOutcome.Refused) {
        refused++;
        compare(site, jacks, "-Dpitchwatch.seed=" + seed + " " + site);
      }
    }
    System.out.printf(
        "low end, seed %d: %d coaches refused by the jacks, %d helped by blocks under the low end%n",
        SEED, refused, helped);
    assertTrue(refused > CASES / 5 && helped > CASES / 50, refused + " refused, " + helped);
  }

  private void compare(Site site, JackPlanner jacks, String where) {
    Optional<WheelPlan> plan = new WheelPlanner(site).planFor(jacks);
    List<Axle> axles = site.coach().axles();
    double middleMm = (axles.get(0).positionMm() + axles.get(axles.size() - 1).positionMm()) / 2;
    Optional<WheelPlannerOracle.Best> best =
        WheelPlannerOracle.best(
            site,
            axle ->
                site.lean().pitchRad() > 0
                    ? axles.get(axle).positionMm() >= middleMm
                    : axles.get(axle).positionMm() <= middleMm,
            heights -> isTaken(site, jacks, heights));
    assertEquals(best.isPresent(), plan.isPresent(), where);
    if (plan.isPresent()) {
      helped++;
      WheelPlannerOracle.Best most = best.orElseThrow();
      assertEquals(List.of(), PlanInspection.faults(site, plan.orElseThrow()), where);
      assertEquals(most.excessHundredths(), plan.orElseThrow().excessHundredths(), where);
      assertEquals(most.pieces(), plan.orElseThrow().pieces(), where);
      double leanRad = Math.abs(plan.orElseThrow().after().rollRad());
      assertEquals(most.leanRad(), leanRad, 1e-9, where);
      assertEquals(most.tallestMm(), PlanInspection.tallestMm(plan.orElseThrow()), 1e-5, where);
    }
  }

  private static boolean isTaken(Site site, JackPlanner jacks, double[] heightsMm) {
    double[] leftMm = new double[heightsMm.length / 2];
    double[] rightMm = new double[leftMm.length];
    for (int i = 0; i < heightsMm.length; i++) {
      (i % 2 == 0 ? leftMm : rightMm)[i / 2] = heightsMm[i];
    }
    Stance stance = new Stance(site.coach());
    double pitchRad = site.lean().pitchRad() - stance.lift(leftMm, rightMm).pitchRad();
    double rollRad = Math.abs(site.lean().rollRad() - stance.lift(leftMm, rightMm).rollRad());
    WheelLifts lifts = new WheelLifts(stance, leftMm, rightMm);
    boolean isNoWorse = rollRad <= Math.abs(site.lean().rollRad()) + 1e-9;
    return (isNoWorse || Excess.hundredths(rollRad, site.toleranceRad()) == 0)
        && isNearTheLine(site.coach().axles(), leftMm, rightMm)
        && jacks.takes(lifts, pitchRad);
  }

  /**
   * Over three axles the springs pitch the body by no more than 0.075 deg from the line through the
   * outer ones. The moments of springs at a mean height of e, with rates c = load / droop, about
   * their centre s give it a slope of c₂·(x₂ − s)·e / Σ c·(x − s)².
   */
  private static boolean isNearTheLine(List<Axle> axles, double[] leftMm, double[] rightMm) {
    if (axles.size() < 3) {
      return true;
    }
    double sum = 0;
    double centreMm = 0;
    for (Axle axle : axles) {
      sum += axle.loadKg() / axle.droopMm();
      centreMm += axle.loadKg() / axle.droopMm() * axle.positionMm();
    }
    centreMm /= sum;
    double inertia = 0;
    for (Axle axle : axles) {
      double armMm = axle.positionMm() - centreMm;
      inertia += axle.loadKg() / axle.droopMm() * armMm * armMm;
    }
    Axle middle = axles.get(1);
    double ofFront =
        (middle.positionMm() - axles.get(2).positionMm())
            / (axles.get(0).positionMm() - axles.get(2).positionMm());
    double lineMm =
        (ofFront * (leftMm[0] + rightMm[0]) + (1 - ofFront) * (leftMm[2] + rightMm[2])) / 2;
    double aboveMm = (leftMm[1] + rightMm[1]) / 2 - lineMm;
    double slope =
        middle.loadKg()
            / middle.droopMm()
            * (middle.positionMm() - centreMm)
            * Math.abs(aboveMm)
            / inertia;
    return Math.abs(slope) <= Math.tan(Math.toRadians(0.075)) + 1e-12
        && -aboveMm <= middle.droopMm() + 1e-9;
  }
}
