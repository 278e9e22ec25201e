package io.pitchwatch.command;

import java.io.PrintWriter;
import java.util.Locale;

/** The timeline for people, a line each. */
final class TimelineText implements Timeline {

  private final PrintWriter out;

  TimelineText(PrintWriter out) {
    this.out = out;
  }

  /** Days, hours, minutes and seconds. */
  static String time(long nanos) {
    long tenths = Math.floorDiv(nanos, 100_000_000L);
    long seconds = tenths / 10;
    return String.format(
        Locale.ROOT,
        "%2dd %02d:%02d:%02d.%d",
        seconds / 86_400,
        seconds / 3600 % 24,
        seconds / 60 % 60,
        seconds % 60,
        tenths % 10);
  }

  @Override
  public void begin(Title title) {
    line(
        "Rehearsal of \"%s\": coach %s, seed %d, %s.",
        title.scenario(), title.coach(), title.seed(), length(title.seconds()));
    line("Times are scenario time; topics lie below homie/5/%s.", title.coach());
    line("");
  }

  private static String length(double seconds) {
    return seconds >= 172_800
        ? plain(seconds / 86_400) + " days"
        : seconds >= 7200 ? plain(seconds / 3600) + " hours" : plain(seconds / 60) + " minutes";
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? String.valueOf((long) number)
        : String.format(Locale.ROOT, "%.1f", number);
  }

  @Override
  public void add(Entry entry) {
    String at = time(entry.atNanos());
    String value = entry.value().orElse("(empty)");
    switch (entry.kind()) {
      case PUBLISHED -> line("%s  %-26s %s", at, entry.topic(), value);
      case PHASE -> line("%s  %-26s %s  ---", at, entry.topic(), value);
      case ALERT ->
          line(
              "%s  ALERT %s %s%s",
              at, entry.change(), entry.topic(), entry.value().map(text -> ": " + text).orElse(""));
      case LOG -> line("%s  %-26s %s", at, entry.topic(), value);
      case AROUND -> line("%s  * %s: %s", at, entry.topic(), value);
    }
  }

  @Override
  public void end(Summary summary) {
    line("");
    line(
        "%s raised, %s published, %s logged, the service began anew %s.",
        count(summary.alerts().size(), "alert"),
        count(summary.published(), "value"),
        count(summary.logged(), "line"),
        count(summary.restarts(), "time"));
    for (AlertSpan alert : summary.alerts()) {
      line(
          "  %s  %s, %s",
          time(alert.raisedNanos()),
          alert.id(),
          alert.returnedNanos().map(at -> "returned " + time(at).strip()).orElse("still stands"));
    }
    out.flush();
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void line(String format, Object... words) {
    out.print(String.format(Locale.ROOT, format, words).stripTrailing());
    out.print('\n');
  }
}
