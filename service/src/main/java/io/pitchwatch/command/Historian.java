package io.pitchwatch.command;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.store.History;
import io.pitchwatch.store.HistoryEvent;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Answers what people ask about the history; the clerk looks it up. Thread-safe. */
final class Historian {

  private static final String ZERO = "zero";

  private final Coach coach;
  private final History history;
  private final Executor clerk;
  private final LinkClock clock;
  private volatile @Nullable Report last;

  Historian(Coach coach, History history, Executor clerk, LinkClock clock) {
    this.coach = coach;
    this.history = history;
    this.clerk = clerk;
    this.clock = clock;
  }

  /** What is known of the ground from now on. */
  void heard(Report report) {
    last = report;
  }

  /** Notes that the floor as it stood was taken for level: from here on the lean is another. */
  void noteZero(String sensor, long nowNanos) {
    long wallSeconds = clock.wall().apply(nowNanos).getEpochSecond();
    HistoryEvent event = new HistoryEvent(nowNanos, 0, wallSeconds, ZERO, sensor, "");
    clerk.execute(() -> history.note(event));
  }

  /** Looks a page up; the answer comes on the clerk's thread. */
  void answer(HistoryRequest request, Consumer<byte[]> answer) {
    Report report = last;
    Optional<HistoryDocument.Outlook> outlook =
        report == null
            ? Optional.empty()
            : Optional.of(new HistoryDocument.Outlook(report.stay(), report.ground()));
    Instant at = clock.wall().apply(clock.nanos().getAsLong());
    HistoryPage.Wanted wanted = HistoryPage.wanted(request, at);
    clerk.execute(
        () ->
            answer.accept(
                HistoryDocument.of(
                    HistoryPage.read(history, wanted),
                    new HistoryDocument.About(Optional.of(coach), at, outlook))));
  }
}
