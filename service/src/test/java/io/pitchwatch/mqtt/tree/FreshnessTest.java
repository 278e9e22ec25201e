package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.mqtt.Heron;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import org.junit.jupiter.api.Test;

class FreshnessTest {

  private static final long TAKEN_AT = 5_000_000_000L;

  private final Report good = Heron.report(0.1, 0.1, Phase.PARKED, FloorState.STEADY, TAKEN_AT);

  @Test
  void leavesAFreshReportAlone() {
    assertSame(good, Freshness.of(good, TAKEN_AT + Freshness.LIMIT_NANOS));
  }

  /** Whoever goes on saying that all is well, without a sample it is not believed. */
  @Test
  void believesNothingGoodOfAnOldSample() {
    Report old = Freshness.of(good, TAKEN_AT + Freshness.LIMIT_NANOS + 1);
    assertEquals(FloorState.UNKNOWN, old.floor().state());
    assertEquals(Verdict.UNKNOWN, old.verdict());
    assertTrue(Double.isNaN(old.floor().lean().rollRad()));
    assertTrue(Double.isNaN(old.fridges().get(0).marginRad()));
    assertEquals(Health.FAILED, old.sensors().get(0).health());
    assertEquals(good.stay(), old.stay());
  }

  @Test
  void leavesRoomForTheWayWithinTheTenSecondsPromised() {
    assertTrue(Freshness.LIMIT_NANOS <= 9_000_000_000L);
  }

  @Test
  void worksWhenMonotonicTimeIsNegative() {
    Report early = Heron.report(0, 0, Phase.PARKED, FloorState.STEADY, Long.MIN_VALUE + 5);
    assertSame(early, Freshness.of(early, Long.MIN_VALUE + 6));
  }

  @Test
  void watchesCloselyWhileArrivingOrMoving() {
    assertEquals(Pace.PARKED, Freshness.pace(good));
    assertEquals(
        Pace.LIVE, Freshness.pace(Heron.report(0, 0, Phase.ARRIVING, FloorState.STEADY, 0)));
    assertEquals(
        Pace.LIVE, Freshness.pace(Heron.report(0, 0, Phase.PARKED, FloorState.UNSETTLED, 0)));
  }
}
