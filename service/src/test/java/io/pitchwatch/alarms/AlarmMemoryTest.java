package io.pitchwatch.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AlarmMemoryTest {

  private static final AlarmRule RULE =
      new AlarmRule("any", Priority.HIGH, Times.minutes(2), Times.minutes(5), 0, true, true);
  private static final long REBOOT = 17;

  private static Alarm raised(long nowNanos) {
    Alarm pending = AlarmCourse.measured(RULE, Alarm.NORMAL, 1, false, nowNanos);
    return AlarmCourse.measured(RULE, pending, 1, false, nowNanos + Times.minutes(2));
  }

  private static Alarm restarted(Alarm alarm, long stoppedNanos, long awayNanos) {
    return AlarmMemory.of(alarm, stoppedNanos).recall(awayNanos, REBOOT);
  }

  @Test
  void restartRepeatsNothingThatWasAcknowledged() {
    Alarm alarm = restarted(AlarmCourse.acknowledged(raised(0)), Times.minutes(9), 0);
    for (int i = 0; i < 200; i++) {
      alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT + Times.minutes(i));
      assertEquals(AlarmState.ACKNOWLEDGED, alarm.state());
      assertEquals(1, alarm.notices());
    }
  }

  @Test
  void restartRepeatsNoNoticeOfWhatIsNotAcknowledged() {
    Alarm alarm = restarted(raised(0), Times.minutes(60), 0);
    alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT + Times.minutes(60));
    assertEquals(AlarmState.UNACKNOWLEDGED, alarm.state());
    assertEquals(1, alarm.notices());
  }

  @Test
  void sinceWhenGoesOnAcrossTheTimeAway() {
    Alarm alarm = restarted(raised(0), Times.minutes(30), Times.minutes(12));
    assertEquals(REBOOT - Times.minutes(42), alarm.sinceNanos());
  }

  @Test
  void shelfGoesOn() {
    Alarm shelved = AlarmCourse.shelved(raised(0), Times.minutes(60), Times.minutes(2));
    Alarm alarm = restarted(shelved, Times.minutes(22), Times.minutes(10));
    alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT + Times.minutes(29));
    assertEquals(AlarmState.SHELVED, alarm.state());
    alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT + Times.minutes(30));
    assertEquals(AlarmState.UNACKNOWLEDGED, alarm.state());
  }

  @Test
  void delayGoesOnWithWhatWasLeft() {
    Alarm pending = AlarmCourse.measured(RULE, Alarm.NORMAL, 1, false, 0);
    Alarm alarm = restarted(pending, Times.minutes(1), Times.minutes(500));
    alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT);
    assertEquals(AlarmState.NORMAL, alarm.state());
    alarm = AlarmCourse.measured(RULE, alarm, 1, false, REBOOT + Times.minutes(1));
    assertEquals(AlarmState.UNACKNOWLEDGED, alarm.state());
  }

  @Test
  void rememberingTwiceIsRememberingOnce() {
    AlarmMemory memory = AlarmMemory.of(raised(0), Times.minutes(7));
    assertEquals(memory, AlarmMemory.of(memory.recall(0, REBOOT), REBOOT));
  }
}
