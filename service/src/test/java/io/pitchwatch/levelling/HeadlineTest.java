package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeadlineTest {

  private static final Coach HERON =
      HeronOnSite.coach(HeronOnSite.JACKS, HeronOnSite.PIECES, List.of());
  private static final List<Layer> ONE_OF_EACH =
      List.of(new Layer("sheet", 1), new Layer("block", 1));

  private static final Sides NONE = new Sides(0, 0);

  private static WheelStack stack(String axle, Direction side, List<Layer> layers) {
    return new WheelStack(axle, side, 50, layers, List.of());
  }

  private static String headline(List<JackMove> jacks, WheelStack... wheels) {
    Lean leftToTheJacks = Lean.ofDegrees(0, jacks.isEmpty() ? 0 : -0.6);
    WheelPlan under = new WheelPlan(List.of(wheels), leftToTheJacks, 0, 0, 0);
    Site site = HeronOnSite.site(HERON, 1.5, 0);
    return Headline.of(
        new Plan(site, under, jacks, Lean.LEVEL, PlanVerdict.GOOD, List.of(), List.of()));
  }

  @Test
  void wheelsAlikeAreNamedOnce() {
    assertEquals(
        "Right side up 50 mm: 1 sheet + 1 block under each wheel",
        headline(
            List.of(),
            stack("front", Direction.RIGHT, ONE_OF_EACH),
            stack("rear", Direction.RIGHT, ONE_OF_EACH)));
  }

  @Test
  void theOtherSideAndTheJacksFollow() {
    JackMove front = new JackMove("front", 1, 12, NONE, NONE, List.of(), List.of());
    JackMove rear = new JackMove("rear", 2, 59, NONE, NONE, List.of(), List.of());
    assertEquals(
        "Left side up 50 mm: front 1 sheet + 1 block; right: rear 1 sheet; then rear jacks +59 mm",
        headline(
            List.of(front, rear),
            stack("front", Direction.LEFT, ONE_OF_EACH),
            new WheelStack(
                "rear", Direction.RIGHT, 12, List.of(new Layer("sheet", 1)), List.of())));
  }

  @Test
  void jacksAloneBeginTheLine() {
    JackMove rear = new JackMove("rear", 2, 59, NONE, NONE, List.of(), List.of());
    assertEquals("Rear jacks +59 mm", headline(List.of(rear)));
  }

  @Test
  void onALevelFloorTheJacksOnlyMakeContact() {
    Plan level = LevelPlanner.planOnly(HeronOnSite.site(HERON, 0.02, -0.02));
    assertEquals(
        "Level enough as it stands: nothing to lay, jacks to contact only", Headline.of(level));
    Plan wheelsOnly = LevelPlanner.planOnly(HeronOnSite.site(HERON, 1.5, 0.05));
    String headline = Headline.of(wheelsOnly);
    assertTrue(headline.endsWith("; then jacks to contact only"), headline);
  }

  @Test
  void nothingToLayIsSaid() {
    assertEquals("Level enough as it stands: nothing to lay", headline(List.of()));
  }
}
