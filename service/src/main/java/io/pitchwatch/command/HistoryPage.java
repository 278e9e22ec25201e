package io.pitchwatch.command;

import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.store.HistoryEvent;
import io.pitchwatch.store.HistoryQuery;
import io.pitchwatch.store.HistoryRow;
import io.pitchwatch.store.HistorySource;
import io.pitchwatch.store.Resolution;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A part of the history, as much as fits on one page. Times are wall seconds that agree within a
 * run of the service: a board without a clock battery labels its first minutes with nonsense until
 * the network tells it the time, so each row is dated back from the last one of its run.
 *
 * @param resolution of the rows
 * @param entries in the order in which they happened
 * @param events likewise, the latest ones
 * @param truncated whether there was more than fits; the latest is here
 * @param trouble what stopped the reading half way, if anything did
 */
record HistoryPage(
    Resolution resolution,
    List<Entry> entries,
    List<Event> events,
    boolean truncated,
    Optional<String> trouble) {

  /** A day of minutes and a little more. */
  static final int MOST_ROWS = 1500;

  static final int MOST_EVENTS = 100;

  private static final double SECONDS_PER_HOUR = 3600;
  private static final double HOURS_OF_MINUTES = 25;
  private static final double HOURS_OF_HOURS = 62 * 24;

  /** Copies the lists. */
  HistoryPage {
    entries = List.copyOf(entries);
    events = List.copyOf(events);
  }

  /**
   * A row and when it was; without a row, a gap.
   *
   * @param wallSeconds seconds since 1970 at which its time begins (of a minute: ends)
   * @param row empty: nothing is known of the time from here to the next row
   */
  record Entry(long wallSeconds, Optional<HistoryRow> row) {}

  /** Something that happened, and when. */
  record Event(long wallSeconds, HistoryEvent event) {}

  /**
   * Which part is wanted.
   *
   * @param resolution of the rows
   * @param fromSeconds no row before this wall second
   * @param toSeconds no row at or after this one
   * @param mostRows no more rows than this, the latest
   * @param lookBack how many rows to look at; fewer than all only where the rest is too old anyway
   */
  record Wanted(
      Resolution resolution, long fromSeconds, long toSeconds, int mostRows, int lookBack) {

    boolean has(long wallSeconds) {
      return wallSeconds >= fromSeconds && wallSeconds < toSeconds;
    }
  }

  /** What a request wants. */
  static Wanted wanted(HistoryRequest request, Instant now) {
    long to = request.to().map(Instant::getEpochSecond).orElse(Long.MAX_VALUE);
    long end = request.to().orElse(now).getEpochSecond();
    long from =
        request
            .from()
            .map(Instant::getEpochSecond)
            .orElse(end - Math.round(request.hours() * SECONDS_PER_HOUR));
    Resolution fits = fitting((end - from) / SECONDS_PER_HOUR);
    boolean latest = request.from().isEmpty() && request.to().isEmpty();
    return new Wanted(
        request.step().map(step -> Resolution.valueOf(step.name())).orElse(fits),
        from,
        to,
        MOST_ROWS,
        latest ? MOST_ROWS + 1 : Integer.MAX_VALUE);
  }

  private static Resolution fitting(double hours) {
    return hours <= HOURS_OF_MINUTES
        ? Resolution.MINUTE
        : hours <= HOURS_OF_HOURS ? Resolution.HOUR : Resolution.DAY;
  }

  /** Reads the page, in two passes: the first learns when each run was. */
  static HistoryPage read(HistorySource source, Wanted wanted) {
    HistoryQuery query =
        new HistoryQuery(wanted.resolution(), Long.MIN_VALUE, Long.MAX_VALUE, wanted.lookBack());
    Dates dates = new Dates();
    Optional<String> trouble = source.rows(query, dates::learn);
    Deque<HistoryRow> rows = new ArrayDeque<>();
    boolean[] truncated = {false};
    source.rows(
        query,
        row -> {
          if (wanted.has(dates.of(row)) && atMost(rows, row, wanted.mostRows())) {
            truncated[0] = true;
          }
        });
    Deque<Event> events = new ArrayDeque<>();
    Optional<String> further =
        source.events(
            query,
            event -> {
              if (wanted.has(dates.of(event))) {
                atMost(events, new Event(dates.of(event), event), MOST_EVENTS);
              }
            });
    return new HistoryPage(
        wanted.resolution(),
        entries(rows, dates, wanted.resolution()),
        List.copyOf(events),
        truncated[0],
        trouble.or(() -> further));
  }

  /** Adds to the latest; says whether an older one had to go. */
  private static <T> boolean atMost(Deque<T> latest, T next, int most) {
    boolean full = latest.size() == most;
    if (full) {
      latest.removeFirst();
    }
    latest.addLast(next);
    return full;
  }

  /** When each run was, from the label of its last row. */
  private static final class Dates {

    private final Map<Long, Long> beganAt = new HashMap<>();

    void learn(HistoryRow row) {
      beganAt.put(row.run(), row.wallSeconds() - row.atSeconds());
    }

    long of(HistoryRow row) {
      return beganAt.getOrDefault(row.run(), row.wallSeconds() - row.atSeconds()) + row.atSeconds();
    }

    long of(HistoryEvent event) {
      long atSeconds = event.atNanos() / 1_000_000_000L;
      return beganAt.getOrDefault(event.run(), event.wallSeconds() - atSeconds) + atSeconds;
    }
  }

  private static List<Entry> entries(Deque<HistoryRow> rows, Dates dates, Resolution resolution) {
    List<Entry> entries = new ArrayList<>(rows.size());
    HistoryRow before = null;
    long wallBefore = 0;
    for (HistoryRow row : rows) {
      long wall = dates.of(row);
      boolean gap =
          before != null
              && (before.run() != row.run()
                  || row.atSeconds() - before.atSeconds() > 1.5 * resolution.seconds());
      if (gap) {
        entries.add(new Entry(wallBefore + resolution.seconds(), Optional.empty()));
      }
      entries.add(new Entry(wall, Optional.of(row)));
      before = row;
      wallBefore = wall;
    }
    return entries;
  }
}
