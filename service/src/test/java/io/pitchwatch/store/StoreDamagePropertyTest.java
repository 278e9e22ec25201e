package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bytes change at random places of the files: whatever comes back is something that was kept, what
 * does not come back is told, and the store goes on. 30 damaged stores, or 3,000 with {@code
 * -Dpitchwatch.full=true}; another start with {@code -Dpitchwatch.seed=N}.
 */
class StoreDamagePropertyTest {

  private static final long SEED = Long.getLong("pitchwatch.seed", 90_210L);
  private static final int CASES = Boolean.getBoolean("pitchwatch.full") ? 3_000 : 30;
  private static final int ZEROS = 6;
  private static final int MINUTES = 200;

  @TempDir Path directory;

  private static Zero zero(int number) {
    return new Zero(
        UpVector.of(Lean.ofDegrees(0.1 * number, -0.1 * number)), 1e-4, 20, "zero " + number);
  }

  private static Store.Opening open(Path place) {
    return Store.open(place, 0, () -> 1_800_000_000L);
  }

  @Test
  void damageIsToldAndNeverBelieved() throws IOException {
    Path sound = directory.resolve("sound");
    write(sound, true);
    // The log of a killed process: the store is left open while its files are copied.
    Path killed = directory.resolve("killed");
    Path running = directory.resolve("running");
    try (Store store = write(running, false)) {
      copy(running, killed);
    }
    int told = 0;
    for (int i = 0; i < CASES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      Path place = directory.resolve("case" + i);
      copy(random.nextBoolean() ? sound : killed, place);
      damage(place, random);
      told += check(place, SEED + i) ? 1 : 0;
      delete(place);
    }
    assertTrue(told > CASES / 10, told + " of " + CASES + " told: the damage is too mild");
  }

  private static Store write(Path place, boolean close) {
    Store store = open(place).store();
    for (int i = 1; i <= ZEROS; i++) {
      store.kept().keepZero("floor", zero(i));
      store.kept().keepText("alarm", "a" + i, "x".repeat(300));
    }
    for (int i = 1; i <= MINUTES; i++) {
      store.history().add(Minutes.numbered(i));
    }
    if (close) {
      store.close();
    }
    return store;
  }

  /** Whether anything was told. */
  private static boolean check(Path place, long seed) {
    Store.Opening opening = open(place);
    try (Store store = opening.store()) {
      Optional<Zero> zero = store.kept().zero("floor");
      if (zero.isEmpty()) {
        assertFalse(opening.troubles().isEmpty(), () -> "seed " + seed + ": lost in silence");
      } else {
        assertTrue(
            Stream.iterate(1, n -> n + 1).limit(ZEROS).anyMatch(n -> zero.get().equals(zero(n))),
            () -> "seed " + seed + ": believed " + zero);
      }
      for (Resolution resolution : Resolution.values()) {
        store.history().each(HistoryQuery.all(resolution), row -> {});
      }
      Written kept = store.kept().keepZero("floor", zero(99));
      assertFalse(kept instanceof Written.NotLasting, () -> "seed " + seed + ": " + kept);
      for (int i = 1; i <= 10; i++) {
        store.history().add(Minutes.numbered(i));
      }
    }
    Store.Opening again = open(place);
    try (Store store = again.store()) {
      assertEquals(Optional.of(zero(99)), store.kept().zero("floor"), () -> "seed " + seed);
    }
    return !opening.troubles().isEmpty();
  }

  private static void damage(Path place, SplittableRandom random) throws IOException {
    List<Path> files;
    try (Stream<Path> list = Files.list(place)) {
      files =
          list.filter(Files::isRegularFile)
              .filter(file -> !file.toString().endsWith("-shm"))
              .sorted()
              .toList();
    }
    Path file = files.get(random.nextInt(files.size()));
    long size = Files.size(file);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      switch (random.nextInt(5)) {
        case 0 -> channel.truncate(random.nextLong(size + 1));
        case 1 -> channel.write(noise(random, 4096), random.nextLong(size + 1));
        case 2 -> channel.write(noise(random, 100), 0);
        default -> {
          int flips = 1 + random.nextInt(40);
          for (int i = 0; i < flips; i++) {
            channel.write(noise(random, 1), random.nextLong(size + 1));
          }
        }
      }
    }
  }

  private static ByteBuffer noise(SplittableRandom random, int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return ByteBuffer.wrap(bytes);
  }

  static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  private static void delete(Path place) throws IOException {
    try (Stream<Path> files = Files.walk(place)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
