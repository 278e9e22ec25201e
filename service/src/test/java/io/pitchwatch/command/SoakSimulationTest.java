package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.config.Config;
import io.pitchwatch.config.ConfigOutcome;
import io.pitchwatch.config.ConfigReader;
import io.pitchwatch.store.HistoryArchive;
import io.pitchwatch.store.HistoryQuery;
import io.pitchwatch.store.Resolution;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole service for ninety days in which everything fails once a week: sensor, bus, broker,
 * clock and power. By default nine hours with the same faults every three; the ninety days with
 * {@code -Dpitchwatch.full=true}, which takes about an hour of one core.
 */
class SoakSimulationTest {

  private static final boolean FULL = Boolean.getBoolean("pitchwatch.full");
  private static final int CYCLES = FULL ? 12 : 3;
  private static final double CYCLE_MIN = FULL ? 7.5 * 1440 : 180;
  private static final double RUN_MIN = CYCLES * CYCLE_MIN;

  /** Sensor faults of a cycle that leave nothing to believe. */
  private static final int LOSSES = 3;

  private static final double CUT_MIN = 2;

  /** The minute that was not over, and the one in which the power comes back. */
  private static final int LOST_BY_A_CUT = 2;

  private static final long MOST_BYTES_A_DAY = 2_000_000;
  private static final long MOST_GROWTH_BYTES = 1_500_000;
  private static final String CONDITIONS =
      """
      name = "ninety days of faults"
      seed = 90
      coach = "heron.toml"
      [sensor]
      bias = { x = "0.3 mg", y = "-0.2 mg", z = "1 mg" }
      temperature-drift = { x = "0.20 mg/K", y = "0.30 mg/K", z = "0.80 mg/K" }
      [site]
      roll = "0.2 deg"
      surface = "gravel"
      [climate]
      temperature = "18 C"
      day-swing = "6 K"
      """;

  @TempDir Path directory;
  private final Counting counting = new Counting();
  private long firstHeap;
  private long lastHeap;

  /** Counts what is said, and keeps nothing of it. */
  private static final class Counting implements Timeline {

    private long lost;
    private long back;
    private long fridge;
    private long restarts;

    @Override
    public void begin(Title title) {}

    @Override
    public void add(Entry entry) {
      if (entry.kind() == Kind.ALERT && entry.topic().equals("$alert/sensor-1-lost")) {
        lost += entry.change().equals("raised") ? 1 : 0;
        back += entry.change().equals("returned") ? 1 : 0;
      }
      boolean raised = entry.change().equals("raised");
      fridge += raised && entry.topic().equals("$alert/fridge-galley") ? 1 : 0;
    }

    @Override
    public void end(Summary summary) {
      restarts = summary.restarts();
    }
  }

  private static String event(double share, String does, String more) {
    return String.format(
        Locale.ROOT,
        "[[event]]%nat = \"%.3f min\"%nevery = \"%.3f min\"%ntimes = %d%ndoes = \"%s\"%n%s%n",
        share * CYCLE_MIN,
        CYCLE_MIN,
        CYCLES,
        does,
        more);
  }

  private static String events() {
    return event(0.05, "walk", "people = 3\nlasts = \"20 min\"")
        + event(0.10, "bus-fault", "kind = \"nak\"\nlasts = \"2 min\"")
        + event(0.20, "stuck", "lasts = \"2 min\"")
        + event(0.30, "stuck", "what = \"value\"\nlasts = \"2 min\"")
        + event(0.40, "broker-down", "lasts = \"10 min\"")
        + event(0.50, "power-cut", "lasts = \"" + CUT_MIN + " min\"")
        + event(0.60, "bus-fault", "kind = \"spike\"\nshare = 0.05\nlasts = \"5 min\"")
        + event(0.70, "clock-jump", "by = \"-30 days\"")
        + event(0.75, "wind", "rock = \"0.1 deg\"\nlasts = \"15 min\"")
        + event(0.85, "slide-out", "roll = \"3.3 deg\"")
        + event(0.95, "slide-out", "roll = \"-3.3 deg\"");
  }

  @Test
  void nothingGrowsAndNothingIsLost() throws Exception {
    Config config = config();
    Path scenario = directory.resolve("soak.toml");
    SimulatedCoach.Opening opening = SimulatedCoach.open(scenario);
    SimulatedCoach coach =
        assertInstanceOf(SimulatedCoach.Opening.Opened.class, opening, opening::toString).coach();
    long written = writtenBytes();
    long startNanos = System.nanoTime();
    try (Rehearsal rehearsal = new Rehearsal(config, coach, counting, this::heap)) {
      rehearsal.play();
    }
    double tookS = (System.nanoTime() - startNanos) / 1e9;
    double days = RUN_MIN / 1440;
    long aDay = Math.round((writtenBytes() - written) / days);
    long rows = rows(config.store().directory());
    System.out.printf(
        Locale.ROOT,
        "Soak: %.2f days in %.0f s (%,.0f times real time); heap after full GC %,d kB on the first"
            + " day, %,d kB on the last; %,d kB written a day; %d of %,.0f minutes written;"
            + " sensor lost %d times, back %d times; %d restarts%n",
        days,
        tookS,
        RUN_MIN * 60 / tookS,
        firstHeap / 1024,
        lastHeap / 1024,
        aDay / 1024,
        rows,
        RUN_MIN,
        counting.lost,
        counting.back,
        counting.restarts);
    assertEquals(CYCLES, counting.restarts);
    assertEquals((long) LOSSES * CYCLES, counting.lost, "an alert for each loss of the sensor");
    assertEquals((long) LOSSES * CYCLES, counting.back, "each of them returned");
    assertTrue(counting.fridge >= 1, "the fridge was outside its limits");
    assertTrue(rows <= RUN_MIN && rows >= RUN_MIN - CYCLES * (CUT_MIN + LOST_BY_A_CUT) - 1);
    assertTrue(lastHeap - firstHeap < MOST_GROWTH_BYTES, "the heap grew");
    assertTrue(!FULL || aDay < MOST_BYTES_A_DAY, "too much was written");
  }

  private Config config() throws IOException {
    Scenarios.unpack("arrival", directory);
    Path file =
        Files.writeString(
            directory.resolve("soak.toml"),
            CONDITIONS + events() + "[run]\nminutes = " + (int) RUN_MIN + "\n");
    ConfigOutcome outcome = new ConfigReader(Map.of()).readScenario(file);
    Config read = assertInstanceOf(ConfigOutcome.Good.class, outcome, outcome::toString).config();
    return new Config(
        read.file(),
        read.coach(),
        read.sensors(),
        read.mqtt(),
        read.page(),
        new Config.Store(directory.resolve("store")));
  }

  /** After a full collection, near the first ninetieth of the run and near the last. */
  private void heap(long nanos) {
    double share = nanos / (RUN_MIN * 60e9);
    if (firstHeap == 0 && share > 1.0 / 90) {
      firstHeap = usedAfterCollection();
    }
    if (lastHeap == 0 && share > 89.0 / 90) {
      lastHeap = usedAfterCollection();
    }
  }

  @SuppressWarnings("DoNotCallSystemGc") // a full collection is what is asked for
  private static long usedAfterCollection() {
    System.gc();
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
  }

  /** Of this process, as the kernel counts them; 0 where it does not. */
  private static long writtenBytes() throws IOException {
    Path counters = Path.of("/proc/self/io");
    if (!Files.exists(counters)) {
      return 0;
    }
    return Files.readAllLines(counters).stream()
        .filter(line -> line.startsWith("wchar: "))
        .mapToLong(line -> Long.parseLong(line.substring("wchar: ".length())))
        .sum();
  }

  /** Minutes that were ever written: their numbers go on where old ones are forgotten. */
  private static long rows(Path store) {
    HistoryArchive.Opening opening = HistoryArchive.open(store);
    try (HistoryArchive archive =
        assertInstanceOf(HistoryArchive.Opening.Opened.class, opening).archive()) {
      long[] last = {0};
      archive.rows(
          new HistoryQuery(Resolution.MINUTE, Long.MIN_VALUE, Long.MAX_VALUE, 1),
          row -> last[0] = row.number());
      return last[0];
    }
  }
}
