package io.pitchwatch.command;

import io.pitchwatch.store.Store;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;

/** One sensor at its place, its store and the upkeep of it, driven by a command. */
final class BenchPost implements AutoCloseable {

  private static final long SECOND = 1_000_000_000L;

  /** After this much steady rest another second gains little. */
  private static final long STEADY_NANOS = 30 * SECOND;

  private static final long PATIENCE_NANOS = 300 * SECOND;
  private static final long SAY_NANOS = 10 * SECOND;

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
    return Instant.now().toString();
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
    long[] sinceNanos = {startNanos};
    long[] sayNanos = {startNanos};
    until(
        nowNanos -> {
          Optional<String> unready = post.unready(nowNanos);
          if (unready.isPresent()) {
            sinceNanos[0] = nowNanos;
          }
          if (nowNanos - sayNanos[0] >= 0) {
            sayNanos[0] = nowNanos + SAY_NANOS;
            say("  " + unready.orElse("steady; averaging"));
          }
          reason = unready.orElse("");
          return nowNanos - sinceNanos[0] > STEADY_NANOS || nowNanos - startNanos > PATIENCE_NANOS;
        });
    return reason.isEmpty();
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
