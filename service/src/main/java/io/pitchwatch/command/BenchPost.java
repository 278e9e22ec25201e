package io.pitchwatch.command;

import io.pitchwatch.store.Store;
import io.pitchwatch.visit.Health;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.LongPredicate;

/** One sensor at its place, its store and the upkeep of it, driven by a command. */
final class BenchPost implements AutoCloseable {

  private static final long SECOND = 1_000_000_000L;

  /** After this much steady rest another second gains little. */
  private static final long STEADY_NANOS = 30 * SECOND;

  private static final long PATIENCE_NANOS = 300 * SECOND;

  /** A chip that is there has samples within a second or two; before that nothing is odd. */
  private static final long SAY_NANOS = 3 * SECOND;

  private static final long DEAD_NANOS = 10 * SECOND;

  private final Workbench bench;
  private final PrintWriter out;
  private final Store store;
  private final SensorPost post;
  private final Upkeep upkeep;
  private String reason = "";

  BenchPost(Workbench bench, PrintWriter out) {
    this.bench = bench;
    this.out = out;
    Path directory = bench.config().store().directory();
    Store.Opening opening =
        Store.open(directory, bench.clock().nanos(), () -> Instant.now().getEpochSecond());
    opening.troubles().forEach(trouble -> out.println(trouble.text()));
    store = opening.store();
    post = new SensorPost(bench.sensor().id(), bench.driver(), bench.sensor().mounting());
    post.use(store.kept().setup(post.id()));
    store.kept().drift(post.id(), post.chip()).ifPresent(post::know);
    upkeep = new Upkeep(List.of(post), store.kept());
  }

  SensorPost post() {
    return post;
  }

  Upkeep upkeep() {
    return upkeep;
  }

  long nowNanos() {
    return bench.clock().nanos();
  }

  /** A label for what is found out now. */
  String date() {
    return Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  /** Goes on polling until something is so. */
  void until(LongPredicate enough) throws InterruptedException {
    bench.run(post::poll, nowNanos -> !enough.test(nowNanos));
  }

  /**
   * Waits for half a minute of steady floor, saying what is in the way.
   *
   * @return whether it came
   */
  boolean steady() throws InterruptedException {
    long startNanos = nowNanos();
    long[] unreadyNanos = {startNanos};
    reason = "";
    String[] said = {""};
    until(
        nowNanos -> {
          reason = post.unready(nowNanos).orElse("");
          if (!reason.isEmpty()) {
            unreadyNanos[0] = nowNanos;
          }
          String now = reason.isEmpty() ? "steady; averaging" : reason;
          if (!now.equals(said[0]) && nowNanos - startNanos > SAY_NANOS) {
            said[0] = now;
            say("  " + now);
          }
          return nowNanos - unreadyNanos[0] > STEADY_NANOS
              || nowNanos - startNanos > PATIENCE_NANOS
              || dead(nowNanos - startNanos, nowNanos);
        });
    return reason.isEmpty();
  }

  /** Whether a sensor that should have come up long since has not. */
  boolean dead(long waitedNanos, long nowNanos) {
    return waitedNanos > DEAD_NANOS && post.report(nowNanos).health() == Health.FAILED;
  }

  /** Why the floor did not become steady. */
  String reason() {
    return reason;
  }

  void say(String line) {
    out.println(line);
    out.flush();
  }

  @Override
  public void close() {
    store.close();
  }
}
