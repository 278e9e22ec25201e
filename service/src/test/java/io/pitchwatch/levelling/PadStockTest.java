package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Pad;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class PadStockTest {

  private static Coach coach(int kinds, int count, double thinnestMm, double apartMm) {
    List<Pad> pads = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      pads.add(new Pad("pad" + i, thinnestMm + i * apartMm, 300, 300, count));
    }
    return HeronOnSite.coach(HeronOnSite.JACKS, HeronOnSite.PIECES, pads);
  }

  @Test
  void whatACoachCarriesIsSharedOutWhole() {
    Coach coach = coach(3, 8, 38, 38);
    assertEquals(coach.pads(), PadStock.of(coach));
  }

  @Test
  void ofTooManyTheThinnestAreLeftOut() {
    Coach coach = coach(8, 8, 15, 13);
    List<Pad> stock = PadStock.of(coach);
    assertEquals(0, stock.get(0).count());
    assertEquals(8, stock.get(7).count());
    assertEquals(8, stock.size());
  }

  /** A config allows 16 kinds of 200 pads: shared out whole they fill any heap. */
  @Test
  @Timeout(120)
  void theLargestInventoryStillGivesAPlan() {
    Plan plan = LevelPlanner.planOnly(HeronOnSite.site(coach(16, 200, 3, 1.7), 0.2, -0.4));
    assertEquals(PlanVerdict.GOOD, plan.verdict());
    assertTrue(
        plan.jacks().stream().allMatch(move -> move.travelMm().most() < 320), plan.toString());
  }
}
