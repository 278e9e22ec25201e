package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FloorNodeTest {

  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00.987Z");

  private static Map<String, Value> read(Report report) {
    Map<String, Value> values = new HashMap<>();
    for (Reading each : new FloorNode().read(report, at -> NOON)) {
      values.put(each.property().id(), each.value());
    }
    return values;
  }

  /** ISO 8855:2011, 2.10 and 2.12: roll > 0, the right side is low; pitch > 0, the front. */
  @Test
  void saysInWordsWhichSideAndWhichEndAreLow() {
    Map<String, Value> values = read(Heron.parked(1.2, -0.8));
    assertEquals(Value.of("right"), values.get("low-side"));
    assertEquals(Value.of("rear"), values.get("low-end"));
    values = read(Heron.parked(-1.2, 0.8));
    assertEquals(Value.of("left"), values.get("low-side"));
    assertEquals(Value.of("front"), values.get("low-end"));
  }

  @Test
  void callsEvenWhatNobodyCanLayAnythingUnder() {
    assertEquals(Value.of("even"), read(Heron.parked(0.049, 0)).get("low-side"));
    assertEquals(Value.of("right"), read(Heron.parked(0.051, 0)).get("low-side"));
  }

  @Test
  void callsEvenWhatIsNotToldFromLevel() {
    Report sure = Heron.parked(0.06, 0.06);
    Report unsure = Heron.uncertain(sure, 0.031);
    assertEquals(Value.of("right"), read(sure).get("low-side"));
    assertEquals(Value.of("even"), read(unsure).get("low-side"));
  }

  @Test
  void labelsTheFiguresWithWholeSeconds() {
    assertEquals(Value.of("2026-06-01T12:00:00Z"), read(Heron.parked(0, 0)).get("taken-at"));
  }

  @Test
  void saysNothingOfAFloorItDoesNotKnow() {
    Map<String, Value> values = read(Freshness.stopped(Heron.parked(1, 1)));
    for (String id : new String[] {"roll", "pitch", "uncertainty", "low-side", "low-end"}) {
      assertEquals(Value.UNKNOWN, values.get(id), id);
    }
    assertEquals(Value.UNKNOWN, values.get("taken-at"));
    assertEquals(Value.of("unknown"), values.get("state"));
    assertEquals(Value.of("unknown"), values.get("verdict"));
  }

  @Test
  void showsTheLiveLeanWhileMoving() {
    Report moving = Heron.report(2, 1, Phase.UNDER_WAY, FloorState.MOVING, 1);
    assertEquals(Value.of("moving"), read(moving).get("state"));
    assertEquals(Value.of(moving.floor().live().rollDeg()), read(moving).get("roll"));
  }
}
