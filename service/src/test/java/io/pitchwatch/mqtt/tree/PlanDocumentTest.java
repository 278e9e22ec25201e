package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.levelling.LevelPlanner;
import io.pitchwatch.levelling.Plan;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.levelling.Turning;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.mqtt.Schemas;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanDocumentTest {

  private static Site site(double rollDeg, double pitchDeg, Surface surface, Stay stay) {
    return new Site(Heron.COACH, Lean.ofDegrees(rollDeg, pitchDeg), surface, stay);
  }

  @Test
  void everyPlanKeepsTheSchema() throws Exception {
    for (Surface surface : Surface.values()) {
      for (Stay stay : Stay.values()) {
        Plan plan = LevelPlanner.plan(site(-1.7, 0.6, surface, stay));
        assertEquals(
            List.of(), Schemas.faults("plan", PlanDocument.of(plan)), surface + " " + stay);
      }
    }
  }

  @Test
  void headingsKeepTheirs() throws Exception {
    String document = TurnDocument.of(Turning.around(site(1, 0.5, Surface.GRAVEL, Stay.STAY)));
    assertEquals(List.of(), Schemas.faults("turn", document));
  }

  @Test
  void theSchemaRefusesWhatIsNoPlan() throws Exception {
    assertFalse(Schemas.faults("plan", "{}").isEmpty());
    assertFalse(Schemas.faults("turn", "{}").isEmpty());
  }
}
