package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Hours and days are what plain sums over their minutes say, whatever the gaps, restarts and clock
 * jumps; 10 histories, or 500 with {@code -Dpitchwatch.full=true}; another start with {@code
 * -Dpitchwatch.seed=N}.
 */
class RollUpPropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 4_711L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 500 : 10;
  private static final double MICRORADIAN = 1.01e-6;
  private static final double HUNDREDTH = 0.0101;

  @TempDir Path directory;

  private record Told(int run, Minute minute) {

    long begin(Resolution resolution) {
      long end = minute.atNanos() / 1_000_000_000L;
      return Math.max(0, end - 1) / resolution.seconds() * resolution.seconds();
    }
  }

  @Test
  void rowsAreTheSumsOfTheirMinutes() {
    for (int i = 0; i < CASES; i++) {
      long seed = SEED + i;
      List<Told> told = new ArrayList<>();
      Path place = directory.resolve("case" + i);
      SplittableRandom random = new SplittableRandom(seed);
      int runs = 1 + random.nextInt(4);
      for (int run = 1; run <= runs; run++) {
        try (Store store = Store.open(place, 0, () -> 0).store()) {
          live(store.history(), random, run, told);
        }
      }
      try (Store store = Store.open(place, 0, () -> 0).store()) {
        for (Resolution resolution : Resolution.values()) {
          compare(Minutes.rows(store.history(), resolution), told, resolution, seed);
        }
      }
    }
  }

  private static void live(History history, SplittableRandom random, int run, List<Told> told) {
    long atNanos = random.nextInt(100) * Minutes.NANOS;
    int count = 1 + random.nextInt(random.nextBoolean() ? 20 : 2000);
    for (int i = 0; i < count; i++) {
      atNanos += (1 + (random.nextInt(50) == 0 ? random.nextInt(600) : 0)) * Minutes.NANOS;
      long wallSeconds = random.nextLong(-1_000_000_000L, 4_000_000_000L);
      Minute minute = Minutes.random(random, atNanos, wallSeconds);
      told.add(new Told(run, minute));
      history.add(minute);
    }
  }

  private static void compare(
      List<HistoryRow> rows, List<Told> told, Resolution resolution, long seed) {
    int from = 0;
    for (HistoryRow row : rows) {
      int to = from;
      while (to < told.size() && belongs(told.get(to), told.get(from), resolution)) {
        to++;
      }
      compare(row, told.subList(from, to), resolution, "seed " + seed + ", " + row);
      from = to;
    }
    assertEquals(told.size(), from, () -> "seed " + seed + ": minutes that no " + resolution);
  }

  private static boolean belongs(Told one, Told first, Resolution resolution) {
    return resolution == Resolution.MINUTE
        ? one.equals(first)
        : one.run() == first.run() && one.begin(resolution) == first.begin(resolution);
  }

  private static void compare(
      HistoryRow row, List<Told> minutes, Resolution resolution, String message) {
    Told first = minutes.get(0);
    assertEquals(first.run(), row.run(), message);
    assertEquals(first.minute().wallSeconds(), row.wallSeconds(), message);
    assertEquals(minutes.size(), row.minutes(), message);
    if (resolution != Resolution.MINUTE) {
      assertEquals(first.begin(resolution), row.atSeconds(), message);
    }
    assertEquals(known(minutes, Minute::rollRad).count(), row.known(), message);
    compare(row.roll(), minutes, Minute::rollRad, message);
    compare(row.pitch(), minutes, Minute::pitchRad, message);
    double uncertainty =
        Math.sqrt(mean(known(minutes, Minute::uncertaintyRad).map(value -> value * value)));
    assertEquals(uncertainty, row.uncertaintyRad(), MICRORADIAN, message);
    double spread = Math.sqrt(mean(known(minutes, Minute::spreadRad).map(value -> value * value)));
    assertEquals(spread, row.spreadRad(), MICRORADIAN, message);
    double temperature = mean(known(minutes, Minute::temperatureC));
    assertEquals(temperature, row.temperatureC(), HUNDREDTH, message);
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    minutes.forEach(told -> marks.addAll(told.minute().marks()));
    assertEquals(marks, row.marks(), message);
  }

  private static void compare(
      HistoryRow.Angle angle, List<Told> minutes, ToDoubleFunction<Minute> part, String message) {
    double none = Double.NaN;
    assertEquals(mean(known(minutes, part)), angle.meanRad(), MICRORADIAN, message);
    double least = known(minutes, part).min().orElse(none);
    assertEquals(least, angle.leastRad(), MICRORADIAN, message);
    double most = known(minutes, part).max().orElse(none);
    assertEquals(most, angle.mostRad(), MICRORADIAN, message);
  }

  private static DoubleStream known(List<Told> minutes, ToDoubleFunction<Minute> part) {
    return minutes.stream().map(Told::minute).mapToDouble(part).filter(Double::isFinite);
  }

  private static double mean(DoubleStream values) {
    return values.average().orElse(Double.NaN);
  }
}
