package io.pitchwatch.alarms;

import static io.pitchwatch.alarms.AlarmState.ACKNOWLEDGED;
import static io.pitchwatch.alarms.AlarmState.NORMAL;
import static io.pitchwatch.alarms.AlarmState.RETURNED_UNACKNOWLEDGED;
import static io.pitchwatch.alarms.AlarmState.SHELVED;
import static io.pitchwatch.alarms.AlarmState.SUPPRESSED_BY_DESIGN;
import static io.pitchwatch.alarms.AlarmState.UNACKNOWLEDGED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class AlarmCourseTest {

  private static final AlarmRule LATCHING =
      new AlarmRule("latching", Priority.HIGH, Times.minutes(2), Times.minutes(5), 0.1, true, true);
  private static final AlarmRule PLAIN =
      new AlarmRule("plain", Priority.LOW, 0, 0, 0, false, false);
  private static final double BEYOND = 0.5;
  private static final double INSIDE = -0.5;
  private static final double JUST_INSIDE = -0.05;

  private Alarm alarm = Alarm.NORMAL;
  private AlarmRule rule = LATCHING;
  private long nowNanos = -Times.minutes(30);

  private AlarmState after(long minutes, double excess) {
    return after(minutes, excess, false);
  }

  private AlarmState after(long minutes, double excess, boolean underWay) {
    nowNanos += Times.minutes(minutes);
    alarm = AlarmCourse.measured(rule, alarm, excess, underWay, nowNanos);
    return alarm.state();
  }

  private void raise() {
    after(0, BEYOND);
    assertEquals(UNACKNOWLEDGED, after(2, BEYOND));
  }

  @Test
  void conditionMustHoldForTheOnDelay() {
    assertEquals(NORMAL, after(0, BEYOND));
    assertEquals(NORMAL, after(1, BEYOND));
    assertEquals(UNACKNOWLEDGED, after(1, BEYOND));
    assertEquals(1, alarm.notices());
    assertEquals(nowNanos - Times.minutes(2), alarm.sinceNanos());
  }

  @Test
  void shortExcursionRaisesNothing() {
    after(0, BEYOND);
    assertEquals(NORMAL, after(1, INSIDE));
    assertEquals(NORMAL, after(1, BEYOND));
    assertEquals(NORMAL, after(1, BEYOND));
    assertEquals(0, alarm.notices());
  }

  @Test
  void deadbandKeepsTheDelayRunningAndTheAlarmUp() {
    after(0, BEYOND);
    after(1, JUST_INSIDE);
    assertEquals(UNACKNOWLEDGED, after(1, JUST_INSIDE));
    assertEquals(UNACKNOWLEDGED, after(60, JUST_INSIDE));
  }

  @Test
  void conditionMustBeGoneForTheOffDelay() {
    raise();
    after(0, INSIDE);
    assertEquals(UNACKNOWLEDGED, after(4, INSIDE));
    assertEquals(RETURNED_UNACKNOWLEDGED, after(1, INSIDE));
  }

  @Test
  void latchedAlarmStaysUntilAcknowledged() {
    raise();
    after(0, INSIDE);
    assertEquals(RETURNED_UNACKNOWLEDGED, after(600, INSIDE));
    alarm = AlarmCourse.acknowledged(alarm);
    assertEquals(NORMAL, alarm.state());
  }

  @Test
  void plainAlarmGoesByItself() {
    rule = PLAIN;
    assertEquals(UNACKNOWLEDGED, after(0, BEYOND));
    assertEquals(NORMAL, after(0, INSIDE));
  }

  @Test
  void acknowledgedAlarmStandsUntilItIsOver() {
    raise();
    alarm = AlarmCourse.acknowledged(alarm);
    assertEquals(ACKNOWLEDGED, alarm.state());
    assertEquals(ACKNOWLEDGED, after(600, BEYOND));
    after(0, INSIDE);
    assertEquals(NORMAL, after(5, INSIDE));
    assertEquals(1, alarm.notices());
  }

  @Test
  void whatIsAcknowledgedAlreadyDoesNotChange() {
    assertSame(alarm, AlarmCourse.acknowledged(alarm));
  }

  @Test
  void returnedAlarmIsRaisedAgain() {
    raise();
    after(0, INSIDE);
    assertEquals(RETURNED_UNACKNOWLEDGED, after(5, INSIDE));
    after(5, BEYOND);
    assertEquals(UNACKNOWLEDGED, after(2, BEYOND));
    assertEquals(2, alarm.notices());
  }

  @Test
  void secondNoticeWaitsUntilTenMinutesAreOver() {
    rule = PLAIN;
    after(0, BEYOND);
    after(1, INSIDE);
    after(1, BEYOND);
    assertEquals(1, alarm.notices());
    after(7, BEYOND);
    assertEquals(1, alarm.notices());
    after(1, BEYOND);
    assertEquals(2, alarm.notices());
  }

  @Test
  void owedNoticeLapsesWhenTheAlarmIsOverBeforeIt() {
    rule = PLAIN;
    after(0, BEYOND);
    after(1, INSIDE);
    after(1, BEYOND);
    after(1, INSIDE);
    after(60, INSIDE);
    assertEquals(1, alarm.notices());
  }

  @Test
  void shelvedAlarmIsQuietAndComesBackWhenTheTimeIsOver() {
    raise();
    alarm = AlarmCourse.shelved(alarm, Times.minutes(60), nowNanos);
    assertEquals(SHELVED, alarm.state());
    assertEquals(SHELVED, after(59, BEYOND));
    assertEquals(1, alarm.notices());
    assertEquals(UNACKNOWLEDGED, after(1, BEYOND));
    assertEquals(2, alarm.notices());
  }

  @Test
  void acknowledgedAlarmOffTheShelfIsNewsAgainIfItStillHolds() {
    raise();
    alarm = AlarmCourse.shelved(AlarmCourse.acknowledged(alarm), Times.minutes(30), nowNanos);
    assertEquals(UNACKNOWLEDGED, after(30, BEYOND));
  }

  @Test
  void shelvedAlarmThatIsOverIsNormalWhenTheTimeIsOver() {
    alarm = AlarmCourse.shelved(alarm, Times.minutes(30), nowNanos);
    assertEquals(SHELVED, after(0, INSIDE));
    assertEquals(NORMAL, after(30, INSIDE));
    assertEquals(0, alarm.notices());
  }

  @Test
  void unshelvingTellsAtOnce() {
    after(0, INSIDE);
    alarm = AlarmCourse.shelved(alarm, Times.minutes(60), nowNanos);
    after(0, BEYOND);
    assertEquals(SHELVED, after(2, BEYOND));
    alarm = AlarmCourse.unshelved(alarm, nowNanos);
    assertEquals(UNACKNOWLEDGED, alarm.state());
    assertEquals(1, alarm.notices());
    assertSame(alarm, AlarmCourse.unshelved(alarm, nowNanos));
  }

  @Test
  void shelfIsLimited() {
    assertThrows(
        IllegalArgumentException.class,
        () -> AlarmCourse.shelved(alarm, AlarmCourse.LONGEST_SHELF_NANOS + 1, 0));
    assertThrows(IllegalArgumentException.class, () -> AlarmCourse.shelved(alarm, 0, 0));
  }

  @Test
  void underWayItIsSuppressedByDesignAndStartsFromNormalAfterwards() {
    raise();
    assertEquals(SUPPRESSED_BY_DESIGN, after(0, BEYOND, true));
    assertEquals(SUPPRESSED_BY_DESIGN, after(60, BEYOND, true));
    assertEquals(NORMAL, after(1, INSIDE));
    assertEquals(1, alarm.notices());
    after(0, BEYOND);
    assertEquals(UNACKNOWLEDGED, after(2, BEYOND));
  }

  @Test
  void otherAlarmsGoOnUnderWay() {
    rule = PLAIN;
    assertEquals(UNACKNOWLEDGED, after(0, BEYOND, true));
  }

  @Test
  void unknownHoldsTheDelay() {
    after(0, BEYOND);
    after(1, Double.NaN);
    after(600, Double.NaN);
    assertEquals(NORMAL, after(0, BEYOND));
    assertEquals(UNACKNOWLEDGED, after(1, BEYOND));
    after(0, INSIDE);
    after(4, Double.NaN);
    assertEquals(UNACKNOWLEDGED, after(100, INSIDE));
    assertEquals(RETURNED_UNACKNOWLEDGED, after(1, INSIDE));
  }

  @Test
  void nothingIsAllocatedWhenNothingChanges() {
    raise();
    Alarm before = alarm;
    for (int i = 0; i < 100; i++) {
      after(1, BEYOND);
      assertSame(before, alarm);
    }
    after(0, Double.NaN);
    assertSame(before, alarm);
  }
}
