package io.pitchwatch.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.alarms.AlarmOutcome;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.visit.Report.AlertReport;
import io.pitchwatch.visit.Report.SensorReport;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WatchkeeperTest {

  private static final long SEED = 20261125;
  private static final long ROUND_NANOS = 200_000_000L;
  private static final double NOISE_DEG = 0.003;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final Coach coach = Heron.COACH;
  private final Watchkeeper keeper = keeper();
  private Health health = Health.GOOD;
  private long nowNanos;

  private Watchkeeper keeper() {
    return new Watchkeeper(
        coach,
        List.of(new FittedSensor("1", GroundModel.withoutThermometer())),
        VisitState.atStart(0));
  }

  private Report round(FloorState state, double rollDeg, double pitchDeg) {
    nowNanos += ROUND_NANOS;
    double noise = NOISE_DEG * random.nextGaussian();
    Lean lean = Lean.ofDegrees(rollDeg + noise, pitchDeg + noise);
    FloorReading floor =
        new FloorReading(state, lean, lean, Math.toRadians(0.005), 0.001, nowNanos);
    SensorReport sensor =
        new SensorReport("1", health, "", Double.NaN, 0.001, SensorSight.of(floor));
    return keeper.round(floor, List.of(sensor), nowNanos);
  }

  private Report stand(double minutes, double rollDeg, double pitchDeg) {
    Report report = round(FloorState.STEADY, rollDeg, pitchDeg);
    for (int i = 1; i < minutes * 300; i++) {
      report = round(FloorState.STEADY, rollDeg, pitchDeg);
    }
    return report;
  }

  private static boolean has(Report report, String id) {
    return report.alerts().stream().map(AlertReport::id).anyMatch(id::equals);
  }

  @Test
  void aLevelNightRaisesNothing() {
    Report report = stand(8 * 60, 0.1, -0.1);
    assertEquals(List.of(), report.alerts());
    assertEquals(Verdict.GOOD, report.verdict());
    assertEquals(Phase.PARKED, report.phase());
  }

  @Test
  void aFridgeOutsideItsLimitsIsSaidAndItsAcknowledgementIsKept() {
    Report report = stand(30, 4, 0);
    assertEquals(Verdict.OUTSIDE, report.verdict());
    assertTrue(has(report, "fridge-galley"), report.alerts()::toString);
    assertInstanceOf(AlarmOutcome.Done.class, keeper.acknowledge("fridge-galley"));
    assertInstanceOf(AlarmOutcome.Refused.class, keeper.acknowledge("fridge-attic"));
    Watchkeeper again = keeper();
    again.recallAlarms(keeper.rememberAlarms(nowNanos), 0);
    AlarmMemory memory = again.rememberAlarms(0).get("fridge-galley");
    assertTrue(memory != null && memory.acknowledged(), () -> String.valueOf(memory));
  }

  @Test
  void aShelvedAlertIsQuiet() {
    assertTrue(has(stand(30, 4, 0), "fridge-galley"));
    keeper.shelve("fridge-galley", 600_000_000_000L, nowNanos);
    assertFalse(has(stand(1, 4, 0), "fridge-galley"));
    assertTrue(has(stand(11, 4, 0), "fridge-galley"), "when the ten minutes are over");
  }

  @Test
  void aLostSensorIsSaid() {
    stand(1, 0, 0);
    health = Health.FAILED;
    Report report = round(FloorState.UNKNOWN, Double.NaN, Double.NaN);
    for (int i = 0; i < 60 && !has(report, "sensor-1-lost"); i++) {
      report = round(FloorState.UNKNOWN, Double.NaN, Double.NaN);
    }
    assertTrue(has(report, "sensor-1-lost"), report.alerts()::toString);
  }

  @Test
  void aSinkingPitchIsSaidBeforeTheFridgeSuffers() {
    stand(4 * 60, 1, 0);
    double rollDeg = 1;
    while (rollDeg < 3) {
      // A quarter of a degree an hour, a minute at a time.
      rollDeg += 0.25 / 60;
      if (has(stand(1, rollDeg, 0), "settling")) {
        break;
      }
    }
    assertTrue(rollDeg < 2.75, "said at " + rollDeg + " deg; an hour before 3 deg is 2.75");
  }

  @Test
  void drivingOffIsNoAlert() {
    stand(30, 1, 0);
    Report report = round(FloorState.MOVING, 5, 3);
    for (int i = 0; i < 600; i++) {
      report = round(FloorState.MOVING, 5 * Math.sin(i), 3);
    }
    assertEquals(Phase.UNDER_WAY, report.phase());
    assertEquals(List.of(), report.alerts());
  }

  @Test
  void eachSensorIsWatchedAtItsOwnTemperature() {
    GroundModel model = GroundModel.withThermometer(Math.toRadians(0.03));
    Watchkeeper two =
        new Watchkeeper(
            coach,
            List.of(new FittedSensor("front", model), new FittedSensor("rear", model)),
            VisitState.atStart(0));
    Installation rear = new Installation(Guide.IDLE, Double.NaN, Double.NaN, "", 1);
    GroundReport told = GroundReport.UNKNOWN;
    for (int second = 1; second < 36 * 3600; second++) {
      double warmC = 20 + 8 * Math.sin(2 * Math.PI * second / (6 * 3600.0));
      long nanos = second * 1_000_000_000L;
      FloorReading steady = reading(0.3, nanos);
      FloorReading drifts = reading(0.3 + 0.04 * (warmC - 20), nanos);
      told =
          two.round(
                  drifts,
                  List.of(sensor("front", steady, 41 - warmC), sensor("rear", drifts, warmC)),
                  rear,
                  nanos)
              .ground();
    }
    assertEquals(0.04, Math.toDegrees(two.drift(1).perC().y()), 0.004);
    assertEquals(0, Math.toDegrees(two.drift(0).perC().y()), 0.004);
    assertFalse(told.settling());
    double believedDeg = Math.toDegrees(told.roll().driftRadPerC());
    assertEquals(0.04, believedDeg, 0.004, "by the believed sensor's watch");
  }

  private FloorReading reading(double rollDeg, long nanos) {
    Lean lean = Lean.ofDegrees(rollDeg + NOISE_DEG * random.nextGaussian(), 0.1);
    return new FloorReading(FloorState.STEADY, lean, lean, Math.toRadians(0.005), 0.001, nanos);
  }

  private static SensorReport sensor(String id, FloorReading seen, double temperatureC) {
    return new SensorReport(id, Health.GOOD, "", temperatureC, 0.001, SensorSight.of(seen));
  }
}
