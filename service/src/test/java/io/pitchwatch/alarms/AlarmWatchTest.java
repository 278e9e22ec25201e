package io.pitchwatch.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.alarms.SensorTrust.Trust;
import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Units;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.settling.GroundReport.Trend;
import io.pitchwatch.settling.HoursToLimit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AlarmWatchTest {

  private static final Lean LEVEL = Lean.ofDegrees(0.1, 0.1);
  private static final SensorTrust GOOD = new SensorTrust("adxl345", Trust.GOOD, "");

  private final FridgeWatch fridge =
      new FridgeWatch(new Fridge("galley", Math.toRadians(3), Math.toRadians(6), Optional.empty()));
  private final Coach coach = coach(Units.METRIC);
  private final AlarmWatch watch = new AlarmWatch(coach, List.of("adxl345"));
  private double leanDoubtRad;
  private Lean lean = LEVEL;
  private boolean underWay;
  private GroundReport ground = GroundReport.UNKNOWN;
  private SensorTrust sensor = GOOD;
  private double zeroAgeDays = 3;
  private String zeroDoubt = "";
  private int pieces;
  private long nowNanos;

  private Coach coach(Units units) {
    return new Coach(
        "heron",
        units,
        List.of(
            new Axle("front", 0, 1960, 3600, 90, 245, 1, false, false),
            new Axle("rear", -5600, 1830, 6900, 80, 590, 1, true, true)),
        List.of(),
        List.of(),
        List.of(),
        new Levelling(
            40, 160, 0.005, 12, Math.toRadians(1.5), Math.toRadians(0.5), Math.toRadians(0.25)),
        List.of(fridge.fridge()),
        List.of());
  }

  private List<StandingAlarm> round(AlarmWatch of) {
    fridge.accept(lean, underWay, nowNanos);
    Situation situation =
        new Situation(
            lean,
            leanDoubtRad,
            underWay,
            Math.toRadians(0.5),
            List.of(fridge),
            ground,
            List.of(sensor),
            Double.NaN,
            zeroAgeDays,
            zeroDoubt,
            pieces);
    return of.round(situation, nowNanos);
  }

  private List<StandingAlarm> rounds(int minutes) {
    List<StandingAlarm> standing = round(watch);
    for (int i = 0; i < minutes; i++) {
      nowNanos += Times.minutes(1);
      standing = round(watch);
    }
    return standing;
  }

  private static GroundReport settling() {
    return new GroundReport(
        0,
        true,
        0,
        new Trend(Math.toRadians(0.11), Math.toRadians(0.02), Math.toRadians(0.42), 0, 0),
        new Trend(0, Math.toRadians(0.02), Math.toRadians(-0.05), 0, 0),
        new HoursToLimit("fridge galley", 9.2, 6.1, Double.POSITIVE_INFINITY),
        Optional.empty());
  }

  @Test
  void nothingStandsOverALevelFloor() {
    assertEquals(List.of(), rounds(120));
  }

  @Test
  void alarmThatHoldsAtTheStartIsRaised() {
    sensor = new SensorTrust("adxl345", Trust.LOST, "It does not answer on the bus.");
    StandingAlarm alarm = round(watch).get(0);
    assertEquals("sensor-adxl345-lost", alarm.id());
    assertEquals(AlarmState.UNACKNOWLEDGED, alarm.state());
    assertEquals(1, alarm.notices());
    assertEquals(
        "Sensor adxl345 gives no readings. It does not answer on the bus. Look at"
            + " its plug and power; until it is back nobody watches the floor.",
        alarm.text());
  }

  @Test
  void whatADriverSaysOfItsTroubleIsToldAsASentence() {
    sensor = new SensorTrust("adxl345", Trust.LOST, "no samples: no chip answers");
    assertEquals(
        "Sensor adxl345 gives no readings. No samples: no chip answers. Look at its plug and power;"
            + " until it is back nobody watches the floor.",
        round(watch).get(0).text());
  }

  @Test
  void fridgePastItsLimitIsUrgentAndSaysWhatAndHowMuch() {
    lean = Lean.ofDegrees(3.4, -0.3);
    List<StandingAlarm> standing = rounds(20);
    assertEquals(List.of("fridge-galley", "floor"), standing.stream().map(a -> a.id()).toList());
    assertEquals(Priority.URGENT, standing.get(0).priority());
    String text = standing.get(0).text();
    assertTrue(text.startsWith("Fridge galley leans past its limit for "), text);
    assertTrue(
        text.contains(
            "0.40 deg too far: right side low by 3.40 deg (116 mm from side to side), rear low by"
                + " 0.30 deg (29 mm from axle to axle)"),
        text);
    assertTrue(text.contains("min outside since parking."), text);
  }

  @Test
  void whatTheSensorMayFeignIsNoReasonForAnAlert() {
    leanDoubtRad = Math.toRadians(0.3);
    lean = Lean.ofDegrees(0.75, 0);
    assertEquals(List.of(), rounds(600));
    lean = Lean.ofDegrees(0.85, 0);
    assertEquals(List.of(), rounds(14));
    String text = rounds(2).get(0).text();
    assertTrue(text.startsWith("The floor leans more than this stay allows for 15 min."), text);
    assertTrue(text.contains("right side low by 0.85 deg"), text);
    assertTrue(text.contains("allowed is 0.50 deg"), text);
  }

  @Test
  void floorPastWhatTheStayAllowsIsToldWhereTheSensorIsSure() {
    leanDoubtRad = Math.toRadians(0.02);
    lean = Lean.ofDegrees(0.55, 0);
    assertEquals("floor", rounds(16).get(0).id());
  }

  @Test
  void textFollowsTheOwnersUnits() {
    lean = Lean.ofDegrees(-3.4, 0.3);
    AlarmWatch imperial = new AlarmWatch(coach(Units.IMPERIAL), List.of("adxl345"));
    round(imperial);
    nowNanos += Times.minutes(2);
    String text = round(imperial).get(0).text();
    assertTrue(text.contains("left side low by 3.40 deg (4-9/16 in from side to side)"), text);
  }

  @Test
  void settlingSaysWhereHowFastAndHowLong() {
    ground = settling();
    StandingAlarm alarm = rounds(5).get(0);
    assertEquals("settling", alarm.id());
    assertEquals(
        "The ground is giving way under the right side for 5 min. It has sunk by 0.42 deg (14 mm"
            + " from side to side) and goes on at 0.11 deg an hour. The limit of fridge galley is"
            + " about 9 h away (6 h at the soonest). Move to firmer ground, or raise that side on"
            + " something wide, before it gets there.",
        alarm.text());
  }

  @Test
  void movingOffWithPiecesLaidIsToldAtOnce() {
    pieces = 3;
    rounds(60);
    underWay = true;
    lean = Lean.ofDegrees(9, 9);
    StandingAlarm alarm = round(watch).get(0);
    assertEquals("pieces-left", alarm.id());
    assertTrue(alarm.text().contains("3 pieces have not been collected."), alarm.text());
    assertEquals(1, rounds(120).size());
  }

  @Test
  void piecesThatAreTickedOffAreCountedDownAtOnce() {
    pieces = 3;
    underWay = true;
    round(watch);
    pieces = 1;
    assertTrue(round(watch).get(0).text().contains("1 piece has not been collected."));
    pieces = 0;
    String text = round(watch).get(0).text();
    assertTrue(text.contains("All of them are said to be collected since."), text);
    watch.acknowledge("pieces-left");
    assertEquals(List.of(), round(watch));
  }

  @Test
  void oldZeroIsTold() {
    zeroAgeDays = 200;
    assertEquals("zero-old", rounds(61).get(0).id());
  }

  @Test
  void acknowledgingShowsInTheNextRound() {
    ground = settling();
    rounds(5);
    assertInstanceOf(AlarmOutcome.Done.class, watch.acknowledge("settling"));
    assertEquals(AlarmState.ACKNOWLEDGED, round(watch).get(0).state());
    assertEquals(AlarmState.ACKNOWLEDGED, rounds(300).get(0).state());
    assertEquals(1, round(watch).get(0).notices());
  }

  @Test
  void wrongIdIsRefusedWithTheRightOnes() {
    AlarmOutcome outcome = watch.acknowledge("setling");
    String reason = assertInstanceOf(AlarmOutcome.Refused.class, outcome).reason();
    assertTrue(reason.contains("settling, sensor-adxl345-lost"), reason);
    assertInstanceOf(AlarmOutcome.Refused.class, watch.shelve("none", 1, nowNanos));
  }

  @Test
  void shelfOfMoreThanADayIsRefused() {
    AlarmOutcome outcome = watch.shelve("settling", AlarmCourse.LONGEST_SHELF_NANOS + 1, nowNanos);
    assertEquals(new AlarmOutcome.Refused("An alarm can be put aside for 0 to 24 h."), outcome);
    assertInstanceOf(AlarmOutcome.Refused.class, watch.shelve("settling", -1, nowNanos));
  }

  @Test
  void shelvedAlarmStandsAsShelvedUntilItIsTakenBack() {
    ground = settling();
    rounds(5);
    watch.shelve("settling", Times.minutes(60), nowNanos);
    assertEquals(AlarmState.SHELVED, rounds(30).get(0).state());
    watch.shelve("settling", 0, nowNanos);
    assertEquals(AlarmState.UNACKNOWLEDGED, round(watch).get(0).state());
    assertEquals(2, round(watch).get(0).notices());
  }

  @Test
  void listIsTheSameWhileNothingChangesAndNewEveryTenMinutes() {
    ground = settling();
    List<StandingAlarm> first = rounds(5);
    assertSame(first, rounds(9));
    assertEquals(first.size(), rounds(1).size());
    assertTrue(round(watch).get(0).text().contains("for 15 min"));
  }

  @Test
  void restartRepeatsNothing() {
    ground = settling();
    rounds(5);
    watch.acknowledge("settling");
    rounds(1);
    AlarmWatch again = new AlarmWatch(coach, List.of("adxl345"));
    again.recall(watch.remember(nowNanos), 0, nowNanos);
    StandingAlarm alarm = round(again).get(0);
    assertEquals(AlarmState.ACKNOWLEDGED, alarm.state());
    assertEquals(1, alarm.notices());
  }

  @Test
  void unknownLeanHasItsOwnWords() {
    lean = Lean.ofDegrees(3.4, 0);
    rounds(20);
    lean = new Lean(Double.NaN, Double.NaN);
    for (StandingAlarm alarm : rounds(15)) {
      assertTrue(alarm.text().contains("The lean is not known at present"), alarm.text());
    }
  }

  @Test
  void zeroThatMayNotHoldIsToldWithItsReasonAfterHalfAnHour() {
    zeroDoubt = "it is 20 \u00b0C warmer than when sensor 1 was zeroed";
    assertEquals(List.of(), rounds(29));
    StandingAlarm alarm = rounds(1).get(0);
    assertEquals("zero-doubtful", alarm.id());
    assertTrue(alarm.text().contains("It is 20 \u00b0C warmer than when sensor 1"), alarm.text());
    zeroDoubt = "";
    assertEquals(List.of(), rounds(61));
  }

  @Test
  void frameOfTwoSensorsIsWatchedForTwist() {
    AlarmWatch two = new AlarmWatch(coach, List.of("one", "two"));
    Situation twisted =
        new Situation(
            LEVEL,
            0,
            false,
            1,
            List.of(fridge),
            ground,
            List.of(new SensorTrust("one", Trust.GOOD, ""), new SensorTrust("two", Trust.GOOD, "")),
            Math.toRadians(-0.5),
            3,
            "",
            0);
    two.round(twisted, 0);
    StandingAlarm alarm = two.round(twisted, Times.minutes(1)).get(0);
    assertEquals("twist", alarm.id());
    assertTrue(alarm.text().contains("By 0.50 deg; at most 0.29 deg is allowed."), alarm.text());
  }

  @Test
  void doubtfulSensorIsToldAfterTenMinutes() {
    sensor = new SensorTrust("adxl345", Trust.DOUBTFUL, "Its noise is ten times what it was.");
    assertEquals(List.of(), rounds(9));
    assertEquals("sensor-adxl345-doubtful", rounds(1).get(0).id());
  }
}
