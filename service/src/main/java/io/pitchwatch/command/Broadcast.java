package io.pitchwatch.command;

import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.AlertBoard;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Display;
import io.pitchwatch.mqtt.tree.Freshness;
import io.pitchwatch.mqtt.tree.Pace;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;

/**
 * What stands on a rehearsed broker: the values and alerts as the live link would publish them,
 * without a broker. It outlives the service, as a broker does.
 */
final class Broadcast {

  private static final String ALERT = "$alert/";
  private static final String LOG = "$log/";
  private static final String STATE = "$state";
  private static final String PHASE = "visit/phase";

  /** Says what every line of the timeline says by itself. */
  private static final String CLOCK = "floor/taken-at";

  private final Config config;
  private final Timeline timeline;
  private final Summing summing;
  private final LongFunction<Instant> wall;
  private final DeviceTopics topics;
  private final Map<String, Optional<String>> standing = new HashMap<>();
  private DeviceTree tree;
  private Display display;
  private AlertBoard alerts;
  private boolean away;

  Broadcast(Config config, Timeline timeline, Summing summing, LongFunction<Instant> wall) {
    this.config = config;
    this.timeline = timeline;
    this.summing = summing;
    this.wall = wall;
    this.topics = new DeviceTopics(config.mqtt().tree(), config.coach().id());
    this.tree = tree();
    this.display = new Display(tree, topics);
    this.alerts = new AlertBoard(topics);
  }

  private DeviceTree tree() {
    return DeviceTree.of(config.coach(), config.sensors().stream().map(Config.Sensor::id).toList());
  }

  /** A service begins, knowing nothing of what an earlier one showed. */
  void begin(long nowNanos) {
    tree = tree();
    display = new Display(tree, topics);
    alerts = new AlertBoard(topics);
    state(DeviceState.READY, nowNanos);
  }

  /** The service vanished: its last will. */
  void lost(long nowNanos) {
    state(DeviceState.LOST, nowNanos);
  }

  /** The service says farewell. */
  void farewell(Report report, long nowNanos) {
    show(Freshness.stopped(report), Pace.AT_ONCE, nowNanos);
    state(DeviceState.DISCONNECTED, nowNanos);
  }

  private void state(DeviceState state, long nowNanos) {
    stands(STATE, Optional.of(state.word()), nowNanos);
  }

  /** The broker went away: what changes now is heard by nobody. */
  void leave() {
    away = true;
  }

  /** The broker is back: everything is said anew, and what changed meanwhile is new there. */
  void come(long nowNanos) {
    away = false;
    display.all().forEach(publication -> publish(publication, nowNanos));
    Map<String, Optional<String>> now = new LinkedHashMap<>();
    alerts.all().forEach(each -> now.put(below(each), text(each)));
    for (String topic : standing.keySet().stream().sorted().toList()) {
      if (topic.startsWith(ALERT) && !now.containsKey(topic)) {
        stands(topic, Optional.empty(), nowNanos);
      }
    }
    now.forEach((topic, text) -> stands(topic, text, nowNanos));
  }

  /** Shows what a report has that is new. */
  void hear(Report report, long nowNanos) {
    Report fresh = Freshness.of(report, nowNanos);
    show(fresh, Freshness.pace(fresh), nowNanos);
  }

  private void show(Report report, Pace pace, long nowNanos) {
    display.show(tree.read(report, wall), pace, nowNanos, each -> publish(each, nowNanos));
    alerts.show(report.alerts(), each -> publish(each, nowNanos));
  }

  /** Says a line of the log; while the broker is away it is in the process's log only. */
  void say(LogLevel level, String text, long nowNanos) {
    add(Timeline.Kind.LOG, LOG + level.word(), Optional.of(text), "", nowNanos);
  }

  private void publish(Publication publication, long nowNanos) {
    if (!away) {
      stands(below(publication), text(publication), nowNanos);
    }
  }

  private String below(Publication publication) {
    return publication.topic().text().substring(topics.base().text().length() + 1);
  }

  private static Optional<String> text(Publication publication) {
    return publication.payload().text().filter(text -> !text.isEmpty());
  }

  private void stands(String topic, Optional<String> value, long nowNanos) {
    Optional<String> before = standing.getOrDefault(topic, Optional.empty());
    standing.put(topic, value);
    if (before.equals(value) || topic.equals(CLOCK)) {
      return;
    }
    if (topic.startsWith(ALERT)) {
      String change = before.isEmpty() ? "raised" : value.isEmpty() ? "returned" : "changed";
      add(Timeline.Kind.ALERT, topic, value, change, nowNanos);
    } else {
      Timeline.Kind kind = topic.equals(PHASE) ? Timeline.Kind.PHASE : Timeline.Kind.PUBLISHED;
      add(kind, topic, value, "", nowNanos);
    }
  }

  private void add(
      Timeline.Kind kind, String topic, Optional<String> value, String change, long nowNanos) {
    Timeline.Entry entry = new Timeline.Entry(nowNanos, kind, topic, value, change);
    summing.add(entry);
    timeline.add(entry);
  }
}
