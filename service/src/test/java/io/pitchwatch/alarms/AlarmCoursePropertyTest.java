package io.pitchwatch.alarms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** However input and people chatter. */
class AlarmCoursePropertyTest {

  private static final long SEED = 8211;

  @Test
  void noticesOfOneAlarmAreNeverCloserThanTenMinutes() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int run = 0; run < 200; run++) {
      AlarmRule rule = rule(random);
      Alarm alarm = Alarm.NORMAL;
      long now = random.nextLong(-1_000_000_000_000L, 1_000_000_000_000L);
      long lastNotice = Long.MIN_VALUE / 2;
      for (int i = 0; i < 2000; i++) {
        now += random.nextLong(Times.seconds(60));
        Alarm next = anything(random, rule, alarm, now);
        if (next.notices() != alarm.notices()) {
          long apart = now - lastNotice;
          assertTrue(apart >= AlarmCourse.QUIET_NANOS, "seed " + SEED + ", run " + run);
          assertEquals(alarm.notices() + 1, next.notices());
          lastNotice = now;
        }
        alarm = next;
      }
    }
  }

  private static AlarmRule rule(SplittableRandom random) {
    return new AlarmRule(
        "any",
        Priority.LOW,
        random.nextLong(Times.minutes(3)),
        random.nextLong(Times.minutes(3)),
        random.nextDouble(0.3),
        random.nextBoolean(),
        random.nextBoolean());
  }

  private static Alarm anything(
      SplittableRandom random, AlarmRule rule, Alarm alarm, long nowNanos) {
    return switch (random.nextInt(20)) {
      case 0 -> AlarmCourse.acknowledged(alarm);
      case 1 -> AlarmCourse.shelved(alarm, 1 + random.nextLong(Times.minutes(30)), nowNanos);
      case 2 -> AlarmCourse.unshelved(alarm, nowNanos);
      case 3 -> AlarmMemory.of(alarm, nowNanos).recall(0, nowNanos);
      case 4 -> AlarmCourse.measured(rule, alarm, Double.NaN, false, nowNanos);
      case 5 -> AlarmCourse.measured(rule, alarm, 1, true, nowNanos);
      default -> AlarmCourse.measured(rule, alarm, random.nextDouble(-1, 1), false, nowNanos);
    };
  }

  /** An alarm that nobody touches is told of as soon as its condition has held for its delay. */
  @Test
  void noAlarmIsLost() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int run = 0; run < 500; run++) {
      AlarmRule rule = rule(random);
      Alarm alarm = Alarm.NORMAL;
      long now = 0;
      for (int i = 0; i < 50; i++) {
        now += random.nextLong(Times.seconds(60));
        alarm = anything(random, rule, alarm, now);
      }
      // Whatever was before: after the longest shelf, a lasting condition is unacknowledged, or
      // acknowledged by somebody who was told.
      now += AlarmCourse.LONGEST_SHELF_NANOS;
      for (int i = 0; i < 10; i++) {
        alarm = AlarmCourse.measured(rule, alarm, 1, false, now);
        now += Times.minutes(4);
      }
      assertTrue(alarm.active(), "seed " + SEED + ", run " + run);
      assertTrue(alarm.notices() > 0 || alarm.acknowledged(), "seed " + SEED + ", run " + run);
    }
  }
}
