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
import io.pitchwatch.visit.Report;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The whole service on this machine: rounds on a thread of their own, and the edges around them.
 */
final class Service implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Service.class);

  private final LinkClock clock = LinkClock.system();
  private final Clerk clerk = new Clerk();
  private final ExecutorService planner = beside("planner");
  private final ExecutorService disk = beside("disk");
  private final Pi4jBus buses;
  private final Lookout lookout;
  private final Thread thread;
  private final StoreClaim claim;
  private final Optional<OwnBroker> broker;
  private final CoachLink link;
  private final Optional<PageServer> page;
  private volatile boolean closing;

  private Service(Config config, BusChoice bus, Held held, Ending ending) {
    this.broker = held.broker();
    this.claim = held.claim();
    this.buses = bus.open();
    Audience audience = audience(ending.reports());
    this.lookout =
        new Lookout(config, buses, new Lookout.Surroundings(clock, clerk, disk, planner, audience));
    this.link = CoachLink.start(Edges.link(config, lookout.orders(), ending, clock));
    lookout.troubles().forEach(trouble -> link.log(LogLevel.WARN, trouble.text()));
    this.thread = new Thread(this::run, "rounds");
    this.thread.start();
    this.page = page(config);
  }

  /** A thread beside the rounds; neither a hard plan nor a hanging card must hold up the end. */
  private static ExecutorService beside(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  /** Nothing is heard before the rounds begin, so the link is there by then. */
  private Audience audience(Consumer<Report> listener) {
    return new Audience() {
      @Override
      public void hear(Report report) {
        link.publish(report);
        listener.accept(report);
      }

      @Override
      public void say(LogLevel level, String text) {
        link.log(level, text);
      }
    };
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

  /** What was taken before the rest could start. */
  private record Held(StoreClaim claim, Optional<OwnBroker> broker) {}

  /** Starts everything that a config asks for. */
  static Start start(Config config, BusChoice bus, Ending ending) {
    Optional<StoreClaim> claim = StoreClaim.take(config.store().directory());
    if (claim.isEmpty()) {
      return new Start.Refused(
          "another Pitchwatch is using "
              + config.store().directory()
              + ": end it first, or give this one a [store] directory of its own");
    }
    if (config.mqtt().broker() == Config.Broker.OTHER) {
      Held held = new Held(claim.get(), Optional.empty());
      return new Start.Running(new Service(config, bus, held, ending));
    }
    BrokerStart started = OwnBroker.start(Edges.broker(config));
    if (started instanceof BrokerStart.Running running) {
      Held held = new Held(claim.get(), Optional.of(running.broker()));
      return new Start.Running(new Service(config, bus, held, ending));
    }
    claim.get().close();
    return new Start.Refused(((BrokerStart.Failed) started).why());
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
        dueNanos = lookout.step(nowNanos);
      } catch (RuntimeException e) {
        // Nothing that one round meets may end the watch.
        LOG.error("a round failed", e);
      }
      try {
        lookout.carryOut(Math.max(0, dueNanos - clock.nanos().getAsLong()));
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
    planner.shutdownNow();
    disk.shutdown();
    link.close();
    page.ifPresent(PageServer::close);
    broker.ifPresent(OwnBroker::close);
    buses.close();
    clerk.close();
    lookout.close();
    claim.close();
  }
}
