package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.CoachLink;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.broker.BrokerStart;
import io.pitchwatch.mqtt.broker.OwnBroker;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.page.PageServer;
import io.pitchwatch.page.PageStart;
import io.pitchwatch.store.Store;
import io.pitchwatch.store.Trouble;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.VisitState;
import io.pitchwatch.visit.Watchkeeper;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The whole service on this machine: rounds on a thread of their own, and the edges around them.
 */
final class Service implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Service.class);

  private final Inbox inbox = new Inbox();
  private final LinkClock clock = LinkClock.system();
  private final Store store;
  private final Pi4jBus buses;
  private final Watch watch;
  private final Rounds rounds;
  private final Thread thread;
  private final Optional<OwnBroker> broker;
  private final CoachLink link;
  private final Optional<PageServer> page;
  private volatile boolean closing;

  private Service(Config config, BusChoice bus, Optional<OwnBroker> broker, Ending ending) {
    this.broker = broker;
    long startNanos = clock.nanos().getAsLong();
    Store.Opening opening =
        Store.open(
            config.store().directory(),
            startNanos,
            () -> clock.wall().apply(clock.nanos().getAsLong()).getEpochSecond());
    opening.troubles().stream().map(Trouble::text).forEach(LOG::warn);
    this.store = opening.store();
    this.buses = bus.open();
    Watchkeeper keeper =
        new Watchkeeper(
            config.coach(),
            config.sensors().stream().map(Config.Sensor::id).toList(),
            SensorPosts.groundModel(config),
            store.kept().visit(startNanos).orElseGet(() -> VisitState.atStart(startNanos)));
    keeper.recallAlarms(store.kept().alarms(), startNanos);
    this.watch = new Watch(SensorPosts.of(config, buses, store.kept()), keeper, store.kept());
    this.link = CoachLink.start(Edges.link(config, orders(), ending, clock));
    this.rounds = new Rounds(watch.posts(), keeper, new Outlet(ending.reports()));
    this.thread = new Thread(this::run, "rounds");
    this.thread.start();
    this.page = page(config);
  }

  /** What came of starting. */
  sealed interface Start {
    record Running(Service service) implements Start {}

    record Refused(String why) implements Start {}
  }

  /**
   * Whom to tell.
   *
   * @param reports hears every report, on the thread of the rounds
   * @param wornOut hears, once, that only a new process helps
   */
  record Ending(Consumer<Report> reports, Consumer<String> wornOut) {}

  /** Starts everything that a config asks for. */
  static Start start(Config config, BusChoice bus, Ending ending) {
    if (config.mqtt().broker() == Config.Broker.OTHER) {
      return new Start.Running(new Service(config, bus, Optional.empty(), ending));
    }
    BrokerStart started = OwnBroker.start(Edges.broker(config));
    if (started instanceof BrokerStart.Running running) {
      return new Start.Running(new Service(config, bus, Optional.of(running.broker()), ending));
    }
    return new Start.Refused(((BrokerStart.Failed) started).why());
  }

  private Orders orders() {
    return new Orders(
        inbox, watch, clock.nanos(), nanos -> clock.wall().apply(nanos).toString(), this::say);
  }

  /** An order can only come through the link, so the link is there by then. */
  private void say(LogLevel level, String text) {
    link.log(level, text);
  }

  private static Optional<PageServer> page(Config config) {
    if (!config.page().enabled()) {
      return Optional.empty();
    }
    PageStart started = PageServer.start(Edges.page(config));
    if (started instanceof PageStart.Started running) {
      return Optional.of(running.server());
    }
    LOG.warn(((PageStart.Refused) started).reason());
    return Optional.empty();
  }

  Optional<PageServer> page() {
    return page;
  }

  private void run() {
    while (!closing) {
      long nowNanos = clock.nanos().getAsLong();
      long dueNanos = nowNanos + Rounds.REPORT_NANOS;
      try {
        dueNanos = rounds.step(nowNanos);
      } catch (RuntimeException e) {
        // Nothing that one round meets may end the watch.
        LOG.error("a round failed", e);
      }
      try {
        inbox.carryOut(Math.max(0, dueNanos - clock.nanos().getAsLong()));
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  /** Ends the rounds, says farewell on the broker, and closes everything. */
  @Override
  public void close() {
    closing = true;
    thread.interrupt();
    try {
      thread.join(2000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    store.kept().keepVisit(watch.keeper().state());
    link.close();
    page.ifPresent(PageServer::close);
    broker.ifPresent(OwnBroker::close);
    buses.close();
    store.close();
  }

  /** Sends each report where it belongs, and keeps the phase when it changes. */
  private final class Outlet implements Consumer<Report> {

    private final Consumer<Report> listener;
    private final Map<String, String> troubles = new HashMap<>();
    private @Nullable Report last;
    private int alarmChanges;

    Outlet(Consumer<Report> listener) {
      this.listener = listener;
    }

    /** What is wrong with a sensor is said once, when it begins, and that it is over. */
    private void tellHealth(SensorReport sensor) {
      String said = troubles.getOrDefault(sensor.id(), "");
      if (!said.equals(sensor.reason())) {
        troubles.put(sensor.id(), sensor.reason());
        boolean well = sensor.reason().isEmpty();
        link.log(
            well ? LogLevel.INFO : LogLevel.WARN,
            "sensor " + sensor.id() + ": " + (well ? "good again" : sensor.reason()));
      }
    }

    @Override
    public void accept(Report report) {
      link.publish(report);
      if (last == null || last.phase() != report.phase()) {
        store.kept().keepVisit(watch.keeper().state());
      }
      if (alarmChanges != watch.keeper().alarmChanges()) {
        alarmChanges = watch.keeper().alarmChanges();
        store.kept().keepAlarms(watch.keeper().rememberAlarms(report.atNanos()));
      }
      report.sensors().forEach(this::tellHealth);
      last = report;
      listener.accept(report);
    }
  }
}
