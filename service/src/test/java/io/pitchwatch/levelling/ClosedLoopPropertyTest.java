package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.sim.world.Attitude;
import io.pitchwatch.sim.world.Chassis;
import io.pitchwatch.sim.world.Ground;
import io.pitchwatch.sim.world.Parking;
import io.pitchwatch.sim.world.Pose;
import io.pitchwatch.sim.world.Side;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Plans carried out under a simulated coach: springs, wheels that cannot pull, jacks that share
 * their pressure; found from forces alone, on firm ground. What is counted, the simulator counts.
 */
class ClosedLoopPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 4711);
  private static final int SITES = Boolean.getBoolean("pitchwatch.full") ? 10_000 : 300;

  /** The formula takes tangents of small angles for angles, and jacks and frame give a little. */
  private static final double GIVES_DEG = 0.06;

  private int laid;
  private int promised;
  private int shared;
  private double worstDeg;

  @Test
  void theFloorIsLevelWheneverThePlanSaysSoAndNoLimitIsBroken() {
    RandomSites sites = new RandomSites(SEED, 4, 30);
    for (int i = 0; i < SITES; i++) {
      Site site = jacksAtTheAxles(sites.next(2 + i / 2 % 2, i % 2 == 0));
      boolean jacks = !site.coach().jackPairs().isEmpty();
      Plan plan = LevelPlanner.planOnly(site);
      if (plan.verdict() != PlanVerdict.MOVE) {
        int axles = site.coach().axles().size();
        String which = "seed " + SEED + ", site " + i + ", axles " + axles;
        carryOut(plan, which + (jacks ? ", jacks" : ""));
      }
    }
    System.out.printf(
        "closed loop, seed %d: %d sites, %d plans carried out, %d promised level, worst difference"
            + " %.3f deg%n",
        SEED, SITES, laid, promised, worstDeg);
    assertTrue(shared > 0, "no plan whose springs share a lift");
    assertTrue(laid > SITES / 3 && promised > SITES / 6, laid + " laid, " + promised + " promised");
  }

  /** Makers put jacks within reach of the axles (common practice). */
  private static Site jacksAtTheAxles(Site site) {
    Coach coach = site.coach();
    List<JackPair> pairs = new ArrayList<>();
    for (JackPair pair : coach.jackPairs()) {
      double xMm = pairs.isEmpty() ? pair.positionMm() : coach.axles().get(1).positionMm() + 300;
      pairs.add(
          new JackPair(
              pair.id(),
              xMm,
              pair.spacingMm(),
              pair.clearanceMm(),
              pair.strokeMm(),
              pair.keepUnderMm(),
              pair.capacityKg(),
              pair.footMm()));
    }
    return site.with(coach.withJackPairs(pairs));
  }

  private void carryOut(Plan plan, String which) {
    Coach coach = plan.site().coach();
    Parking parking = new Parking(chassis(coach), ground(plan.site()));
    for (WheelStack wheel : plan.wheels().wheels()) {
      parking.lay(wheel.axle(), side(wheel.side()), stack(coach, wheel));
    }
    near(plan.wheels().after().rollDeg(), parking.attitude().rollRad(), which + ": roll on stacks");
    double sharedDeg =
        Math.toDegrees(WheelLifts.of(coach, plan.wheels().wheels()).sharedPitchRad());
    near(
        plan.wheels().after().pitchDeg() + sharedDeg,
        parking.attitude().pitchRad(),
        which + ": pitch on stacks");
    double contactMm = coach.levelling().contactMm();
    for (JackMove move : plan.jacks()) {
      parking.pad(move.pair(), move.padMm().left() / 1000, move.padMm().right() / 1000);
      parking.raise(move.pair(), contactMm / 1000);
    }
    for (JackMove move : plan.jacks()) {
      parking.raise(move.pair(), (move.raiseMm() - contactMm) / 1000);
    }
    Pose pose = parking.pose();
    laid++;
    if (plan.verdict() == PlanVerdict.GOOD) {
      promised++;
      double toleranceDeg = Math.toDegrees(plan.site().toleranceRad()) + GIVES_DEG;
      assertEquals(0, Math.toDegrees(pose.attitude().rollRad()), toleranceDeg, which + ": roll");
      boolean said = plan.reasons().stream().anyMatch(reason -> reason.code().equals("springs"));
      shared += said ? 1 : 0;
      double pitchDeg = Math.toDegrees(pose.attitude().pitchRad()) - (said ? sharedDeg : 0);
      assertEquals(0, pitchDeg, toleranceDeg, which + ": pitch");
    }
    assertTrue(!pose.brakedTyreHangs(), which + ": a braked tyre hangs");
    for (Pose.Jack jack : pose.jacks()) {
      // A jack that came free is not run out after the body.
      assertTrue(!jack.overStroke() || jack.loadN() < 1, which + ": over stroke " + jack);
      assertTrue(!jack.overloaded(), which + ": overloaded " + jack);
    }
  }

  private void near(double expectedDeg, double actualRad, String what) {
    double actualDeg = Math.toDegrees(actualRad);
    worstDeg = Math.max(worstDeg, Math.abs(expectedDeg - actualDeg));
    assertEquals(expectedDeg, actualDeg, GIVES_DEG, what);
  }

  private static Ground ground(Site site) {
    Attitude lie = new Attitude(site.lean().rollRad(), site.lean().pitchRad());
    return new Ground(lie, Double.POSITIVE_INFINITY);
  }

  private static Side side(Direction side) {
    return side == Direction.LEFT ? Side.LEFT : Side.RIGHT;
  }

  private static io.pitchwatch.sim.world.Stack stack(Coach coach, WheelStack wheel) {
    Layer lowest = wheel.layers().get(0);
    double areaMm2 = 0;
    for (Piece piece : coach.pieces()) {
      if (piece.id().equals(lowest.piece())) {
        areaMm2 = lowest.abreast() * piece.widthMm() * piece.lengthMm();
      }
    }
    return new io.pitchwatch.sim.world.Stack(wheel.liftMm() / 1000, areaMm2 / 1e6);
  }

  private static Chassis chassis(Coach coach) {
    List<io.pitchwatch.sim.world.Axle> axles = new ArrayList<>();
    for (Axle axle : coach.axles()) {
      axles.add(
          new io.pitchwatch.sim.world.Axle(
              axle.id(),
              axle.positionMm() / 1000,
              axle.trackMm() / 1000,
              axle.loadKg(),
              axle.droopMm() / 1000,
              axle.stiffness(),
              0.08,
              axle.parkingBrake()));
    }
    List<io.pitchwatch.sim.world.JackPair> pairs = new ArrayList<>();
    for (JackPair pair : coach.jackPairs()) {
      pairs.add(
          new io.pitchwatch.sim.world.JackPair(
              pair.id(),
              pair.positionMm() / 1000,
              pair.spacingMm() / 1000,
              pair.clearanceMm() / 1000,
              pair.strokeMm() / 1000,
              pair.capacityKg(),
              0.09));
    }
    return new Chassis(axles, pairs, 0);
  }
}
