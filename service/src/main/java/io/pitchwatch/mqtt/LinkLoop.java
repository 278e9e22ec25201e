package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.check.CheckDesk;
import io.pitchwatch.mqtt.check.HistoryDesk;
import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Inbox;
import io.pitchwatch.mqtt.link.Outbox;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Freshness;
import io.pitchwatch.mqtt.tree.Pace;
import io.pitchwatch.mqtt.tree.Ruling;
import io.pitchwatch.visit.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One round after the other: say what is new, read what came in, keep the connection. */
final class LinkLoop {

  private static final int INBOX = 64;
  private static final int EVENTS = 32;

  private final Outbox outbox = new Outbox(EVENTS);
  private final Inbox inbox = new Inbox(INBOX);
  private volatile Optional<Report> latest = Optional.empty();
  private final DeviceTopics topics;
  private final Voice voice;
  private final CommandDesk commands;
  private final CheckDesk checks;
  private final HistoryDesk histories;
  private final HubLink hubs;
  private final LinkLog log;
  private final Connection connection;

  LinkLoop(LinkParts parts, Runnable wake) {
    MqttSettings settings = parts.settings();
    topics = new DeviceTopics(settings.tree(), parts.device().coach().id());
    DeviceTree tree = DeviceTree.of(parts.device().coach(), parts.device().sensors());
    hubs = new HubLink(tree, topics, settings, parts.device().version());
    voice = new Voice(tree, topics, hubs, parts.clock().wall());
    commands = new CommandDesk(tree, topics, parts.commands(), voice.display());
    checks = new CheckDesk(tree, topics, settings.announce(), parts.clock().wall());
    histories = new HistoryDesk(topics, settings.announce(), parts.commands(), wake);
    log = new LinkLog(topics, outbox);
    connection = new Connection(parts, topics, new Mail(inbox, outbox, log), wake);
  }

  /** The report from now on; never blocks. */
  void latest(Report report) {
    latest = Optional.of(report);
  }

  LinkLog log() {
    return log;
  }

  /** One round. */
  void round(long nowNanos) {
    Optional<Report> report = latest;
    report.ifPresent(r -> sayNews(r, nowNanos));
    read(nowNanos);
    report.ifPresent(r -> checks.answer(r, nowNanos, outbox::put));
    histories.answer(outbox::put);
    connection.keep(voice, wanted(), nowNanos);
  }

  private void sayNews(Report report, long nowNanos) {
    Report fresh = Freshness.of(report, nowNanos);
    voice.say(fresh, Freshness.pace(fresh), nowNanos, outbox::put);
  }

  private List<Filter> wanted() {
    List<Filter> wanted = new ArrayList<>(commands.filters());
    wanted.add(new Filter(topics.check().text(), 1));
    wanted.add(new Filter(topics.history().text(), 1));
    wanted.addAll(hubs.filters());
    return wanted;
  }

  private void read(long nowNanos) {
    Optional<Arrival> next = inbox.poll();
    while (next.isPresent()) {
      read(next.get(), nowNanos);
      next = inbox.poll();
    }
    long dropped = inbox.takeDropped();
    if (dropped > 0) {
      log.complain(
          dropped + " messages came faster than they are read, and were dropped", nowNanos);
    }
  }

  private void read(Arrival arrival, long nowNanos) {
    if (hubs.isBirth(arrival)) {
      voice.forHub().forEach(outbox::put);
      return;
    }
    boolean check = arrival.topic().equals(topics.check().text());
    boolean history = arrival.topic().equals(topics.history().text());
    if (!check && !history && !commands.knows(arrival.topic())) {
      return;
    }
    if (arrival.retained()) {
      log.complain(arrival.topic() + " ignored: it was sent to stand; commands are not", nowNanos);
      return;
    }
    Ruling ruling = check ? checks.take(arrival) : take(arrival, history);
    if (ruling instanceof Ruling.Refused refused) {
      log.complain(arrival.topic() + " refused: " + refused.why(), nowNanos);
    }
  }

  private Ruling take(Arrival arrival, boolean history) {
    try {
      return history ? histories.take(arrival) : commands.take(arrival, outbox::put);
    } catch (RuntimeException e) {
      LinkLog.local(LogLevel.ERROR, "command failed: " + e);
      return new Ruling.Refused("the service could not take it");
    }
  }

  /**
   * The last rounds: what was measured is not known any more, then the device is disconnected.
   *
   * @return whether everything is said, or cannot be
   */
  boolean isFarewellSaid(long nowNanos) {
    return connection.isIdle(nowNanos);
  }

  /** Puts the last words in line. */
  void sayFarewell(long nowNanos) {
    latest.ifPresent(r -> voice.say(Freshness.stopped(r), Pace.AT_ONCE, nowNanos, outbox::put));
    outbox.putLast(
        Publication.standing(topics.state(), Payload.of(DeviceState.DISCONNECTED.word())));
  }

  /** Ends the connection. */
  void close() {
    connection.close();
  }
}
