package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.store.Store;
import io.pitchwatch.store.Trouble;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.VisitState;
import io.pitchwatch.visit.Watchkeeper;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * What thinks and remembers in the service: sensors, keeper, orders and store of one coach. It has
 * neither thread nor clock nor broker, so that the very same runs live and in a rehearsal.
 */
final class Lookout implements AutoCloseable {

  private final Store store;
  private final Inbox inbox = new Inbox();
  private final Watch watch;
  private final Orders orders;
  private final Rounds rounds;
  private final PlanDesk plans;
  private final DriftBook drifts;
  private final List<Trouble> troubles;

  /**
   * Around a lookout.
   *
   * @param clock the time; all steps must go by it
   * @param clerk does what touches the history's file, in order
   * @param disk writes what must not be lost, while the rounds wait for it
   * @param planner makes plans, beside the rounds
   * @param audience hears everything
   */
  record Surroundings(
      LinkClock clock, Executor clerk, Executor disk, Executor planner, Audience audience) {}

  /** Opens the store, goes on where it left off, and touches no sensor yet. */
  Lookout(Config config, Pi4jBus buses, Surroundings around) {
    LinkClock clock = around.clock();
    long startNanos = clock.nanos().getAsLong();
    Store.Opening opening =
        Store.open(
            config.store().directory(),
            startNanos,
            () -> clock.wall().apply(clock.nanos().getAsLong()).getEpochSecond());
    troubles = opening.troubles();
    store = opening.store();
    Watchkeeper keeper =
        new Watchkeeper(
            config.coach(),
            SensorPosts.fitted(config),
            store.kept().visit(startNanos).orElseGet(() -> VisitState.atStart(startNanos)));
    keeper.recallAlarms(store.kept().alarms(), startNanos);
    List<SensorPost> posts = SensorPosts.of(config, buses, store.kept());
    Upkeep upkeep = new Upkeep(posts, store.kept());
    Sensors sensors = new Sensors(posts, upkeep, clock.wall());
    store.writeBy(new SamplingScribe(around.disk(), sensors::poll, clock.nanos()));
    Historian historian = new Historian(config.coach(), store.history(), around.clerk(), clock);
    SiteLog sites = new SiteLog(store.siteBook(), clock.wall(), keeper::site);
    watch = new Watch(sensors, keeper, store.kept(), historian, sites);
    Audience audience = around.audience();
    Chronicle chronicle =
        new Chronicle(store.history(), around.clerk(), clock.wall(), audience::say);
    chronicle.recall(store.kept().alarms());
    orders =
        new Orders(
            inbox,
            watch,
            clock.nanos(),
            nanos -> clock.wall().apply(nanos).truncatedTo(ChronoUnit.SECONDS).toString(),
            audience::say);
    plans = new PlanDesk(keeper, Planned::of, around.planner(), audience::say);
    drifts = new DriftBook(posts, keeper, store.kept(), clock);
    Outlet outlet = new Outlet(watch, chronicle, audience);
    rounds = new Rounds(sensors, keeper, outlet.andThen(report -> drifts.round(report.atNanos())));
  }

  /** What was found wrong with the store when it was opened. */
  List<Trouble> troubles() {
    return troubles;
  }

  /** Takes what people ask for, from any thread. */
  Commands orders() {
    return orders;
  }

  /**
   * Does what is due.
   *
   * @return monotonic time at which to call again
   */
  long step(long nowNanos) {
    long dueNanos = rounds.step(nowNanos);
    plans.look();
    return dueNanos;
  }

  /** Carries out what people asked for, waiting up to the given time for a first order. */
  void carryOut(long waitNanos) throws InterruptedException {
    inbox.carryOut(waitNanos);
  }

  /** Ends as a power cut does: what waits to be written is lost. */
  void abandon() {
    store.abandon();
  }

  /**
   * Keeps where everything stands, and closes the store. The clerk must have nothing left to do,
   * and nothing is sampled any more.
   */
  @Override
  public void close() {
    store.writeBy(Supplier::get);
    store.kept().keepVisit(watch.keeper().state());
    drifts.keep();
    store.close();
  }
}
