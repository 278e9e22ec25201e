package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.settling.GroundEvent.Kind;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GroundWatchTest {

  private static final long SEED = 12;
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;
  private static final double HALF_DEG = Math.toRadians(0.5);
  private static final List<LeanLimit> FRIDGE =
      List.of(new LeanLimit("fridge galley", Math.toRadians(3), Math.toRadians(6)));

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final GroundWatch watch =
      new GroundWatch(GroundModel.withoutThermometer(), FRIDGE, HALF_DEG);
  private long minute;

  private GroundReport feed(double rollDeg, double pitchDeg) {
    return watch.accept(
        Minutes.at(
            ++minute,
            rollDeg + 0.005 * random.nextGaussian(),
            pitchDeg + 0.005 * random.nextGaussian()));
  }

  private GroundReport feed(int minutes, double rollDeg) {
    GroundReport report = watch.report();
    for (int i = 0; i < minutes; i++) {
      report = feed(rollDeg, 0.3);
    }
    return report;
  }

  /** Sinks to the right until settling is found, or for the given time; returns the hours. */
  private double sink(double fromDeg, double degPerHour, int minutes) {
    for (int i = 1; i <= minutes; i++) {
      if (feed(fromDeg + degPerHour * i / HOUR, 0.3).settling()) {
        return i / 60.0;
      }
    }
    return Double.NaN;
  }

  @Test
  void firmGroundIsNotSettling() {
    GroundReport report = GroundReport.UNKNOWN;
    for (int i = 0; i < 20 * DAY; i++) {
      report = feed(0.4, -0.2);
      assertFalse(report.settling(), "seed " + SEED + ", minute " + i);
    }
    assertEquals(HoursToLimit.NONE, report.toLimit());
    assertEquals(0, Math.toDegrees(report.roll().rateRadPerHour()), 0.01);
    assertTrue(Math.toDegrees(report.roll().errorRadPerHour()) < 0.02);
  }

  @Test
  void nothingIsKnownBeforeTheFirstBlock() {
    assertSame(GroundReport.UNKNOWN, feed(15, 0.4));
  }

  @Test
  void sinkingIsFoundFromTheFirstHourOn() {
    feed(HOUR, 0.2);
    double hours = sink(0.2, 0.4, 5 * HOUR);
    assertTrue(hours < 2.5, hours + " h");
    assertTrue(watch.report().roll().rateRadPerHour() > 0);
  }

  @Test
  void slowSinkingIsFoundHoursBeforeTheLimit() {
    feed(2 * DAY, 0.2);
    double hours = sink(0.2, 0.05, 5 * DAY);
    assertTrue(0.2 + 0.05 * hours < 1.5, hours + " h");
  }

  @Test
  void rateAndHoursToTheLimitAreTold() {
    feed(DAY, 0.6);
    double found = sink(0.6, 0.2, DAY);
    sink(0.6 + 0.2 * found, 0.2, HOUR);
    GroundReport report = watch.report();
    for (int i = 1; i <= 3 * HOUR; i++) {
      report = feed(0.8 + 0.2 * found + 0.2 * i / HOUR - 0.2 + 0.2 / HOUR, 0.3);
    }
    double now = Math.toDegrees(report.roll().rateRadPerHour());
    assertEquals(0.2, now, 2 * Math.toDegrees(report.roll().errorRadPerHour()) + 0.02);
    HoursToLimit ahead = report.toLimit();
    assertEquals("fridge galley", ahead.limit());
    double truth = (3 - (0.6 + 0.2 * found + 0.2 * 3)) / 0.2;
    assertTrue(ahead.soonestHours() < truth && truth < ahead.latestHours(), ahead.toString());
    double began = (minute * Minutes.MINUTE_NANOS - report.sinceNanos()) / 3.6e12;
    assertEquals(found + 3, began, 1.5);
    assertEquals(0.2 * (found + 3), Math.toDegrees(report.roll().sunkRad()), 0.3);
  }

  @Test
  void firstLimitAheadIsTheStaysToleranceUntilItIsPassed() {
    feed(DAY, -0.4);
    double found = sink(-0.4, 0.3, DAY);
    assertEquals(GroundWatch.TOLERANCE, watch.report().toLimit().limit());
    watch.tolerance(Math.toRadians(0.05));
    sink(-0.4 + 0.3 * found, 0.3, 1);
    feed(12, 0.5);
    assertEquals("fridge galley", watch.report().toLimit().limit());
  }

  @Test
  void slideOutThatStaysIsAnEvent() {
    feed(DAY, 0.2);
    GroundReport report = feed(2 * DAY, 0.55);
    assertFalse(report.settling());
    GroundEvent event = report.lastEvent().orElseThrow();
    assertEquals(Kind.STEP, event.kind());
    assertEquals(0.35, Math.toDegrees(event.rollRad()), 0.01);
    assertEquals((DAY + 1) * Minutes.MINUTE_NANOS, event.atNanos());
  }

  @Test
  void sinkingGoesOnAcrossASlideOut() {
    feed(DAY, 0.2);
    double found = sink(0.2, 0.1, 3 * HOUR);
    assertTrue(Double.isNaN(found), "found after " + found + " h");
    found = sink(0.2 + 0.3 - 0.5, 0.1, 12 * HOUR);
    assertTrue(found < 8, found + " h");
  }

  @Test
  void peopleWhoComeAndGoAreNotSettling() {
    GroundReport report = GroundReport.UNKNOWN;
    double there = 0;
    for (int i = 0; i < 30 * DAY; i++) {
      there = random.nextInt(90) == 0 ? 0.1 * random.nextInt(-1, 2) : there;
      report = feed(0.2 + there, 0.1 - there / 3);
      assertFalse(report.settling(), "seed " + SEED + ", minute " + i);
    }
  }

  @Test
  void reblockingIsAnEventAndEndsSettling() {
    feed(DAY, 0.2);
    double found = sink(0.2, 0.3, DAY);
    assertTrue(watch.report().settling());
    minute++;
    watch.accept(Minutes.moved(minute));
    GroundReport report = feed(5, 0.1);
    assertFalse(report.settling());
    GroundEvent event = report.lastEvent().orElseThrow();
    assertEquals(Kind.MOVED, event.kind());
    assertEquals(-0.1 - 0.3 * found, Math.toDegrees(event.rollRad()), 0.02);
    assertFalse(feed(DAY, 0.1).settling());
  }

  @Test
  void settlingIsOverWhenTheRateHasDiedAway() {
    feed(DAY, 0.2);
    double found = sink(0.2, 0.2, DAY);
    GroundReport report = feed(3 * DAY, 0.2 + 0.2 * found);
    assertFalse(report.settling());
    assertEquals(0, report.roll().sunkRad());
    assertFalse(feed(3 * DAY, 0.2 + 0.2 * found).settling());
  }

  @Test
  void daysWithoutASensorAreBridged() {
    feed(DAY, 0.2);
    minute += 3 * DAY;
    assertFalse(feed(DAY, 0.25).settling());
  }

  @Test
  void minutesThatDoNotCountChangeNothing() {
    feed(DAY, 0.2);
    GroundReport before = watch.report();
    MinuteValue unknown =
        new MinuteValue(
            (minute + 1) * Minutes.MINUTE_NANOS, Double.NaN, 0, 0, 0, Double.NaN, 1, false);
    assertSame(before, watch.accept(unknown));
  }

  @Test
  void timeMustNotGoBack() {
    feed(3, 0);
    minute--;
    assertThrows(IllegalArgumentException.class, () -> feed(0.0, 0.0));
  }

  @Test
  void anotherSiteStartsAnew() {
    feed(DAY, 0.2);
    sink(0.2, 0.3, DAY);
    watch.restart();
    assertSame(GroundReport.UNKNOWN, watch.report());
    assertFalse(feed(DAY, -1.5).settling());
  }
}
