package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.levelling.Turning.Heading;
import io.pitchwatch.levelling.Turning.Headings;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurningTest {

  private static final Coach HERON =
      HeronOnSite.coach(HeronOnSite.JACKS, HeronOnSite.PIECES, List.of());

  private static Headings around(double rollDeg, double pitchDeg) {
    return Turning.around(HeronOnSite.site(HERON, rollDeg, pitchDeg));
  }

  @Test
  void onLevelGroundThereIsNothingToTurnFor() {
    assertEquals(
        List.of("stay as it stands, the ground is level: nothing to lay"),
        around(0.01, 0).best().stream().map(Heading::text).toList());
  }

  @Test
  void aHeadingWithoutASafePlanIsNoAdvice() {
    Headings steep = around(0, 14);
    assertTrue(
        steep.best().stream().allMatch(heading -> heading.verdict() != PlanVerdict.MOVE),
        steep.best().toString());
  }

  /** 14 deg both ways is a slope of 19.7 deg: planned for as it stands, not along its fall line. */
  @Test
  void headingsSteeperThanCanBePlannedForAreNoPlaces() {
    Headings steep = around(14, 14);
    Heading downhill =
        steep.all().stream().filter(heading -> heading.turnDeg() == -45).findFirst().orElseThrow();
    assertTrue(Math.abs(downhill.lean().pitchDeg()) > 15, downhill.toString());
    assertEquals(PlanVerdict.MOVE, downhill.verdict());
    assertEquals(72, steep.all().size());
    assertEquals(PlanVerdict.MOVE, LevelPlanner.plan(steep.site()).verdict());
  }

  @Test
  void whereNoHeadingHasAPlanTheAdviceIsToGoElsewhere() {
    Site site = HeronOnSite.site(HERON, 14, 14);
    Headings none = new Headings(site, 0.3, List.of(), List.of());
    String advice = "no heading on this slope has a safe plan: look for another spot";
    assertEquals(advice, none.headline());
    assertTrue(TurnText.of(none).contains("Best:\n  " + advice + "\n"), TurnText.of(none));
  }

  /** Few pieces are no merit of a heading on which the floor stays further from level. */
  @Test
  void whereNoHeadingIsGoodTheOneThatComesNearestIsBest() {
    Headings steep = around(4.5, 3);
    assertTrue(steep.all().stream().noneMatch(heading -> heading.verdict() == PlanVerdict.GOOD));
    double least =
        steep.all().stream()
            .filter(heading -> heading.verdict() == PlanVerdict.BEST_POSSIBLE)
            .mapToDouble(Heading::outsideRad)
            .min()
            .orElseThrow();
    Heading best = steep.best().get(0);
    assertEquals(least, best.outsideRad(), Math.toRadians(0.01));
    assertTrue(best.text().matches(".*, and still [0-9.]+ deg outside the tolerance"), best.text());
  }
}
