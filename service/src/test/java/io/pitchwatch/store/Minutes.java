package io.pitchwatch.store;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Minutes for the tests. */
final class Minutes {

  static final long NANOS = 60_000_000_000L;

  private Minutes() {}

  /** The minute so many minutes after the start, leaning by as many microradians. */
  static Minute numbered(int number) {
    double lean = number * 1e-6;
    return new Minute(number * NANOS, 60L * number, lean, -lean, 1e-5, 2e-5, 20, Set.of());
  }

  static Minute random(SplittableRandom random, long atNanos, long wallSeconds) {
    boolean known = random.nextInt(5) > 0;
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    for (Mark mark : Mark.values()) {
      if (random.nextInt(20) == 0) {
        marks.add(mark);
      }
    }
    return new Minute(
        atNanos,
        wallSeconds,
        known ? random.nextDouble(-0.1, 0.1) : Double.NaN,
        known ? random.nextDouble(-0.1, 0.1) : Double.NaN,
        known ? random.nextDouble(1e-5, 1e-3) : Double.NaN,
        known ? random.nextDouble(1e-5, 1e-3) : Double.NaN,
        random.nextInt(3) > 0 ? random.nextDouble(-20, 45) : Double.NaN,
        marks);
  }

  static List<HistoryRow> rows(History history, Resolution resolution) {
    return rows(history, HistoryQuery.all(resolution));
  }

  static List<HistoryRow> rows(History history, HistoryQuery query) {
    List<HistoryRow> rows = new ArrayList<>();
    history
        .each(query, rows::add)
        .ifPresent(
            trouble -> {
              throw new AssertionError(trouble.text());
            });
    return rows;
  }
}
