package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.sensing.SampleSink;
import io.pitchwatch.sensing.Sampler;
import io.pitchwatch.store.Scribe;
import io.pitchwatch.store.Store;
import io.pitchwatch.store.Written;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A memory card that hangs for two seconds, under a chip that holds a third of a second. */
@Timeout(60)
class SamplingScribeSimulationTest {

  private static final long LOOK_NANOS = 20_000_000L;
  private static final double HANGS_S = 2;

  @TempDir Path directory;

  private final CountDownLatch hangs = new CountDownLatch(1);
  private final AtomicBoolean onDisk = new AtomicBoolean();
  private final Counting counting = new Counting();
  private Pi4jBus buses;
  private LongConsumer turn;
  private Sampler sampler;
  private long nowNanos;
  private long hangsUntilNanos = Long.MAX_VALUE;

  private static final class Counting implements SampleSink {
    private int samples;
    private int gaps;

    @Override
    public void sample(long nanos, double x, double y, double z) {
      samples++;
    }

    @Override
    public void gap(long nanos) {
      gaps++;
    }
  }

  @BeforeEach
  void aChipIsSampled() throws Exception {
    Path file = Files.writeString(directory.resolve("still.toml"), "seed = 3\n[sensor]\n");
    buses = BusChoice.simulated(file.toString()).open();
    turn = buses.face(LongConsumer.class).orElseThrow();
    sampler = new Sampler(Chip.ADXL345.driver(buses.at(1, 0x53)), counting);
    while (nowNanos < 5e9) {
      sampler.poll(look());
    }
    counting.samples = 0;
    counting.gaps = 0;
  }

  @AfterEach
  void theBusIsClosed() {
    buses.close();
  }

  /** Time goes on by a little whenever somebody looks at it; the card comes back at its time. */
  private long look() {
    nowNanos += LOOK_NANOS;
    turn.accept(nowNanos);
    if (nowNanos >= hangsUntilNanos) {
      hangs.countDown();
    }
    return nowNanos;
  }

  /** Keeps a text on a card that hangs from now on. */
  private Written keep(Store store) {
    hangsUntilNanos = nowNanos + (long) (HANGS_S * 1e9);
    return store.kept().keepText("site", "name", "Alder Bend");
  }

  private Written hanging(Supplier<Written> writing) {
    try {
      assertTrue(hangs.await(30, TimeUnit.SECONDS), "nobody looked at the time meanwhile");
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    Written written = writing.get();
    onDisk.set(true);
    return written;
  }

  private Store store(Scribe scribe) {
    Store store = Store.open(directory.resolve("store"), 0, () -> 0).store();
    store.writeBy(writing -> scribe.write(() -> hanging(writing)));
    return store;
  }

  @Test
  void noSampleIsLostAndNothingIsSaidToBeKeptBeforeItIs() {
    Executor disk = work -> new Thread(work, "disk").start();
    SamplingScribe scribe = new SamplingScribe(disk, this::poll, this::look);
    try (Store store = store(scribe)) {
      long beganNanos = nowNanos;
      assertInstanceOf(Written.Done.class, keep(store));
      assertTrue(onDisk.get(), "answered before it was written");
      assertTrue(nowNanos - beganNanos >= HANGS_S * 1e9, "answered while the card hung");
      assertEquals(0, counting.gaps);
      assertTrue(counting.samples >= 100 * HANGS_S - 32, counting.samples + " samples");
      store.writeBy(Supplier::get);
    }
    try (Store again = Store.open(directory.resolve("store"), 0, () -> 0).store()) {
      assertEquals("Alder Bend", again.kept().text("site", "name").orElse(""));
    }
  }

  /** Why it is done so: whoever only waits finds the chip overrun. */
  @Test
  void whoWaitsWithoutSamplingLosesSamples() {
    Scribe patient =
        writing -> {
          while (hangs.getCount() > 0) {
            look();
          }
          return writing.get();
        };
    try (Store store = store(patient)) {
      keep(store);
      sampler.poll(look());
      assertEquals(1, counting.gaps);
      store.writeBy(Supplier::get);
    }
  }

  private long poll(long atNanos) {
    sampler.poll(atNanos);
    return atNanos;
  }
}
