package io.pitchwatch.command;

import io.pitchwatch.command.Timeline.AlertSpan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sums a timeline up as it goes by. */
final class Summing {

  private static final String ALERT = "$alert/";

  private final List<AlertSpan> alerts = new ArrayList<>();
  private final Map<String, Integer> open = new LinkedHashMap<>();
  private long published;
  private long logged;
  private long restarts;

  void add(Timeline.Entry entry) {
    switch (entry.kind()) {
      case PUBLISHED, PHASE -> published++;
      case LOG -> logged++;
      case ALERT -> alert(entry);
      case AROUND -> {}
    }
  }

  void restarted() {
    restarts++;
  }

  private void alert(Timeline.Entry entry) {
    String id = entry.topic().substring(ALERT.length());
    if (entry.change().equals("raised")) {
      open.put(id, alerts.size());
      alerts.add(new AlertSpan(id, entry.atNanos(), Optional.empty(), entry.value().orElse("")));
    } else if (entry.change().equals("returned")) {
      Integer place = open.remove(id);
      if (place != null) {
        AlertSpan span = alerts.get(place);
        alerts.set(
            place,
            new AlertSpan(id, span.raisedNanos(), Optional.of(entry.atNanos()), span.text()));
      }
    }
  }

  Timeline.Summary summary() {
    return new Timeline.Summary(alerts, published, logged, restarts);
  }
}
