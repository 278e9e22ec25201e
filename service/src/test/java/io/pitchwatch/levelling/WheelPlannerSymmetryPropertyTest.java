package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.Stay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What must hold between two plans, on random coaches of up to 6 kinds and 24 pieces: 400, or
 * 10,000 with {@code -Dpitchwatch.full=true}; other ones with {@code -Dpitchwatch.seed=N}.
 */
class WheelPlannerSymmetryPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 0);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 10_000 : 400;

  @Test
  void moreOnBoardIsNeverWorse() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      Site site = new RandomSites(seed, 6, 24).next();
      Site richer = richer(site, new SplittableRandom(seed));
      // More of a thin sheet may be what puts it under every tyre, which costs pieces.
      if (Barrier.piece(site) == Barrier.piece(richer)) {
        assertTrue(
            compare(WheelsAlone.plan(richer), WheelsAlone.plan(site)) <= 0,
            "-Dpitchwatch.seed=" + seed);
      }
    }
  }

  @Test
  void theMirroredLeanHasTheMirroredPlan() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      Site site = new RandomSites(seed, 6, 24).next();
      Site mirrored = site.with(new Lean(-site.lean().rollRad(), site.lean().pitchRad()));
      if (site.lean().rollRad() != 0) {
        WheelPlan plan = WheelsAlone.plan(site);
        WheelPlan other = WheelsAlone.plan(mirrored);
        String where = "-Dpitchwatch.seed=" + seed;
        assertEquals(plan.after().rollRad(), -other.after().rollRad(), where);
        assertEquals(plan.after().pitchRad(), other.after().pitchRad(), where);
        assertEquals(stacks(plan), stacks(mirror(other)), where);
      }
    }
  }

  @Test
  void inchesAndMillimetresAreTheSame() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      Site site = new RandomSites(seed, 6, 24).next();
      Site inInches = site.with(inInches(site.coach()));
      assertEquals(
          WheelsAlone.plan(site).wheels(),
          WheelsAlone.plan(inInches).wheels(),
          "-Dpitchwatch.seed=" + seed);
    }
  }

  @Test
  void aPlanThatIsLaidAsksForNothingMore() {
    for (long seed = SEED; seed < SEED + CASES; seed++) {
      Site site = new RandomSites(seed, 6, 24).next();
      WheelPlan plan = WheelsAlone.plan(site);
      if (plan.excessHundredths() == 0 && site.stay() != Stay.SEASON) {
        assertEquals(
            0, WheelsAlone.plan(site.with(plan.after())).pieces(), "-Dpitchwatch.seed=" + seed);
      }
    }
  }

  /**
   * By excess, then by pieces; leans are not compared, for more excess may be below a hundredth.
   */
  private static int compare(WheelPlan a, WheelPlan b) {
    return Comparator.comparingLong(WheelPlan::excessHundredths)
        .thenComparingInt(WheelPlan::pieces)
        .compare(a, b);
  }

  private static Site richer(Site site, SplittableRandom random) {
    List<Piece> pieces = new ArrayList<>(site.coach().pieces());
    int i = random.nextInt(pieces.size());
    Piece piece = pieces.get(i);
    pieces.set(i, with(piece, piece.thicknessMm(), piece.count() + 1 + random.nextInt(4)));
    return site.with(site.coach().withPieces(pieces));
  }

  /** Every thickness turned into inches and back, as a file in inches is read. */
  private static Coach inInches(Coach coach) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : coach.pieces()) {
      double inches = piece.thicknessMm() / LengthText.MM_PER_INCH;
      pieces.add(with(piece, inches * LengthText.MM_PER_INCH, piece.count()));
    }
    return coach.withPieces(pieces);
  }

  private static Piece with(Piece piece, double thicknessMm, int count) {
    return new Piece(
        piece.id(),
        piece.kind(),
        thicknessMm,
        piece.lengthMm(),
        piece.widthMm(),
        count,
        piece.maxLoadKg());
  }

  private static WheelPlan mirror(WheelPlan plan) {
    List<WheelStack> wheels = new ArrayList<>();
    for (WheelStack wheel : plan.wheels()) {
      Direction side = wheel.side() == Direction.LEFT ? Direction.RIGHT : Direction.LEFT;
      wheels.add(new WheelStack(wheel.axle(), side, wheel.liftMm(), wheel.layers(), wheel.stair()));
    }
    return new WheelPlan(
        wheels, plan.after(), plan.twistRad(), plan.excessHundredths(), plan.pieces());
  }

  private static List<String> stacks(WheelPlan plan) {
    return plan.wheels().stream().map(WheelStack::toString).sorted().toList();
  }
}
