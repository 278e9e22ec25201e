package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.visit.Advice;
import io.pitchwatch.visit.FittedSensor;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.SensorSight;
import io.pitchwatch.visit.VisitEvent;
import io.pitchwatch.visit.VisitState;
import io.pitchwatch.visit.Watchkeeper;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class PlanDeskTest {

  private final Watchkeeper keeper =
      new Watchkeeper(
          Heron.COACH,
          List.of(new FittedSensor("1", GroundModel.withoutThermometer())),
          VisitState.atStart(0));
  private final Queue<Runnable> planner = new ArrayDeque<>();
  private final List<Site> asked = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private boolean memoryIsFull;
  private long nowNanos;

  private final PlanDesk desk =
      new PlanDesk(keeper, this::plan, planner::add, (level, text) -> said.add(level + " " + text));

  private Planned plan(Site site) {
    asked.add(site);
    if (memoryIsFull) {
      throw new OutOfMemoryError("Java heap space");
    }
    return Planned.of(site);
  }

  /** A round of a coach that stands, right side low. */
  private Advice round() {
    nowNanos += 200_000_000L;
    Lean lean = Lean.ofDegrees(2.1, 0.1);
    FloorReading floor =
        new FloorReading(FloorState.STEADY, lean, lean, Math.toRadians(0.005), 0.001, nowNanos);
    SensorReport sensor =
        new SensorReport("1", Health.GOOD, "", Double.NaN, 0.001, SensorSight.of(floor));
    Advice advice = keeper.round(floor, List.of(sensor), nowNanos).advice();
    desk.look();
    return advice;
  }

  private void finishPlanning() {
    while (!planner.isEmpty()) {
      planner.remove().run();
    }
  }

  @Test
  void aPlanIsMadeOnceAndReachesTheDriver() {
    round();
    round();
    assertEquals(1, planner.size(), "one at a time");
    finishPlanning();
    round();
    assertTrue(round().planned().isPresent());
    assertEquals(1, asked.size());
  }

  @Test
  void planningThatRunsOutOfMemoryIsSaidAndEndsWithThatSite() {
    memoryIsFull = true;
    round();
    finishPlanning();
    round();
    assertEquals("No plan could be worked out for this lean: see the log", round().next());
    assertEquals(
        List.of(
            "ERROR No plan could be worked out for right side low 2.10°, front low 0.10°: a fault of"
                + " this program, please report it"),
        said);
    finishPlanning();
    assertEquals(1, asked.size(), "not tried again and again");

    memoryIsFull = false;
    keeper.on(new VisitEvent.SurfaceSet(Surface.GRAVEL), nowNanos);
    round();
    finishPlanning();
    round();
    assertTrue(round().planned().isPresent(), "another site is planned as ever");
  }
}
