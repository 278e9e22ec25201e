package io.pitchwatch.command;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.settling.MinuteValue;
import io.pitchwatch.store.History;
import io.pitchwatch.store.HistoryEvent;
import io.pitchwatch.store.Mark;
import io.pitchwatch.store.Minute;
import io.pitchwatch.store.Written;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.AlertReport;
import io.pitchwatch.visit.Report.SensorReport;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.LongFunction;

/**
 * Writes down how the floor leaned, minute by minute, and what alerts stood. The disk may be slow,
 * so whatever touches it is done by a clerk: a thread of its own live, at once in a rehearsal.
 */
final class Chronicle {

  /** Kinds of events in the history; words of docs/schemas/history.json. */
  static final String RAISED = "raised";

  static final String RETURNED = "returned";

  private final History history;
  private final Executor clerk;
  private final LongFunction<Instant> wall;
  private final BiConsumer<LogLevel, String> say;
  private final Set<String> standing = new HashSet<>();
  private String lastTrouble = "";

  Chronicle(
      History history,
      Executor clerk,
      LongFunction<Instant> wall,
      BiConsumer<LogLevel, String> say) {
    this.history = history;
    this.clerk = clerk;
    this.wall = wall;
    this.say = say;
  }

  /** Alerts that stood before a restart are not raised anew. */
  void recall(Map<String, AlarmMemory> alarms) {
    alarms.forEach(
        (id, memory) -> {
          if (memory.active()) {
            standing.add(id);
          }
        });
  }

  /** Takes a round's report, and the minute that ended with it. */
  void take(Report report, Optional<MinuteValue> minute) {
    noteAlerts(report);
    if (minute.isPresent()) {
      Minute row = Minute.of(minute.get(), wallSeconds(minute.get().atNanos()), marks(report));
      clerk.execute(() -> tell(history.add(row)));
    }
  }

  private void noteAlerts(Report report) {
    Set<String> now = new HashSet<>();
    for (AlertReport alert : report.alerts()) {
      now.add(alert.id());
      if (standing.add(alert.id())) {
        note(RAISED, alert.id(), alert.text(), report.atNanos());
      }
    }
    for (String id : Set.copyOf(standing)) {
      if (!now.contains(id)) {
        standing.remove(id);
        note(RETURNED, id, "", report.atNanos());
      }
    }
  }

  private void note(String kind, String name, String text, long atNanos) {
    HistoryEvent event = new HistoryEvent(atNanos, 0, wallSeconds(atNanos), kind, name, text);
    clerk.execute(() -> tell(history.note(event)));
  }

  private long wallSeconds(long nanos) {
    return wall.apply(nanos).getEpochSecond();
  }

  private static Set<Mark> marks(Report report) {
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    if (report.ground().settling()) {
      marks.add(Mark.SETTLING);
    }
    if (report.fridges().stream().anyMatch(fridge -> fridge.marginRad() < 0)) {
      marks.add(Mark.FRIDGE_OUTSIDE);
    }
    if (!report.alerts().isEmpty()) {
      marks.add(Mark.ALERT);
    }
    for (SensorReport sensor : report.sensors()) {
      switch (sensor.health()) {
        case DOUBTFUL -> marks.add(Mark.SENSOR_DOUBTFUL);
        case FAILED -> marks.add(Mark.SENSOR_FAILED);
        case GOOD -> {}
      }
    }
    return marks;
  }

  /** What keeps history from lasting is said once, not every minute. */
  private void tell(Written written) {
    String trouble = "";
    if (written instanceof Written.NotLasting failed) {
      trouble = failed.trouble().text();
    } else if (written instanceof Written.Anew anew) {
      trouble = anew.trouble().text();
    }
    if (!trouble.equals(lastTrouble)) {
      lastTrouble = trouble;
      if (!trouble.isEmpty()) {
        say.accept(LogLevel.WARN, trouble);
      }
    }
  }
}
