package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.store.HistoryRow;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** A page of history for people, and for their spreadsheets. */
final class HistoryText {

  private static final int ANGLE_DECIMALS = 4;
  private static final int TEMPERATURE_DECIMALS = 2;

  private HistoryText() {}

  /** A line each, the lean in words; events between the rows. */
  static void table(HistoryPage page, PrintWriter out) {
    if (page.entries().isEmpty()) {
      out.println("Nothing was written down in that time.");
    }
    int next = 0;
    for (HistoryPage.Entry entry : page.entries()) {
      while (next < page.events().size()
          && page.events().get(next).wallSeconds() <= entry.wallSeconds()) {
        event(page.events().get(next++), out);
      }
      out.println(line(entry));
    }
    page.events().subList(next, page.events().size()).forEach(each -> event(each, out));
  }

  private static void event(HistoryPage.Event each, PrintWriter out) {
    String line =
        String.join(
            " ",
            Instant.ofEpochSecond(each.wallSeconds()).toString(),
            " ",
            each.event().kind(),
            each.event().name(),
            each.event().text());
    out.println(line.stripTrailing());
  }

  private static String line(HistoryPage.Entry entry) {
    String time = Instant.ofEpochSecond(entry.wallSeconds()).toString();
    if (entry.row().isEmpty()) {
      return time + "  (nothing from here to the next line)";
    }
    HistoryRow row = entry.row().get();
    Lean lean = new Lean(row.roll().meanRad(), row.pitch().meanRad());
    String marks = HistoryDocument.marks(row);
    return String.format(
            Locale.ROOT,
            "%s  %-42s %s",
            time,
            LeanText.of(lean),
            marks.isEmpty() ? "" : "[" + marks + "]")
        .stripTrailing();
  }

  /** A header and a row each; what is not known is empty, and so is all of a gap. */
  static void csv(HistoryPage page, PrintWriter out) {
    List<String> units =
        List.of("_utc", "_deg", "_deg", "_deg", "_deg", "_deg", "_deg", "_deg", "_deg", "_c");
    StringBuilder header = new StringBuilder();
    for (int i = 0; i < HistoryDocument.COLUMNS.size(); i++) {
      header
          .append(i == 0 ? "" : ",")
          .append(snake(HistoryDocument.COLUMNS.get(i)))
          .append(i < units.size() ? units.get(i) : "");
    }
    out.println(header);
    for (HistoryPage.Entry entry : page.entries()) {
      out.println(
          Instant.ofEpochSecond(entry.wallSeconds())
              + ","
              + entry.row().map(HistoryText::fields).orElse(",".repeat(11)));
    }
  }

  private static String snake(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  private static String fields(HistoryRow row) {
    String angles =
        DoubleStream.of(
                row.roll().meanRad(),
                row.roll().leastRad(),
                row.roll().mostRad(),
                row.pitch().meanRad(),
                row.pitch().leastRad(),
                row.pitch().mostRad(),
                row.uncertaintyRad(),
                row.spreadRad())
            .mapToObj(rad -> field(Math.toDegrees(rad), ANGLE_DECIMALS))
            .collect(Collectors.joining(","));
    return String.join(
        ",",
        angles,
        field(row.temperatureC(), TEMPERATURE_DECIMALS),
        Integer.toString(row.minutes()),
        Integer.toString(row.known()),
        HistoryDocument.marks(row));
  }

  private static String field(double value, int decimals) {
    return Optional.of(value)
        .filter(Double::isFinite)
        .map(finite -> HistoryDocument.plain(finite, decimals))
        .orElse("");
  }
}
