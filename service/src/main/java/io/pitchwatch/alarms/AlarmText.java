package io.pitchwatch.alarms;

/**
 * What an alarm says to people, in three sentences; since when is added by {@link #since}.
 *
 * @param what what is wrong
 * @param howMuch by how much
 * @param whatToDo what somebody should do
 */
public record AlarmText(String what, String howMuch, String whatToDo) {

  private static final double NANOS_PER_MINUTE = 60e9;
  private static final long MINUTES_PER_HOUR = 60;
  private static final long HOURS_PER_DAY = 24;

  /** Everything as one line. */
  public String line(long lastedNanos) {
    String since = since(lastedNanos);
    return what + (since.isEmpty() ? "" : " " + since) + ". " + howMuch + " " + whatToDo;
  }

  /** Since when, in words: "for 12 min", "for 3 h", "for 2 days"; nothing in the first minute. */
  static String since(long lastedNanos) {
    long minutes = Math.max(0, (long) (lastedNanos / NANOS_PER_MINUTE));
    if (minutes < 1) {
      return "";
    }
    if (minutes < 2 * MINUTES_PER_HOUR) {
      return "for " + minutes + " min";
    }
    long hours = minutes / MINUTES_PER_HOUR;
    return hours < 2 * HOURS_PER_DAY
        ? "for " + hours + " h"
        : "for " + hours / HOURS_PER_DAY + " days";
  }
}
