package io.pitchwatch.alarms;

/** Times of rules and of texts. */
final class Times {

  private static final long SECOND_NANOS = 1_000_000_000L;
  private static final double DAY_HOURS = 24;

  private Times() {}

  static long seconds(long seconds) {
    return seconds * SECOND_NANOS;
  }

  static long minutes(long minutes) {
    return seconds(minutes * 60);
  }

  /** "under 1 h", "7 h", "3 days". */
  static String hours(double hours) {
    if (hours < 1) {
      return "under 1 h";
    }
    return hours < 2 * DAY_HOURS
        ? Math.round(hours) + " h"
        : Math.round(hours / DAY_HOURS) + " days";
  }
}
