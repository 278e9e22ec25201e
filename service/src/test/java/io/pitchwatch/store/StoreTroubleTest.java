package io.pitchwatch.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Zero;
import io.pitchwatch.store.Trouble.Dropped;
import io.pitchwatch.store.Trouble.NotLasting;
import io.pitchwatch.store.Trouble.SetAside;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever state the files are in, there is a store, and what is wrong is told. */
class StoreTroubleTest {

  private static final long MAY_2026 = 1_778_000_000L;

  @TempDir Path directory;

  private Store.Opening open() {
    return Store.open(directory, 0, () -> MAY_2026);
  }

  private Path kept() {
    return directory.resolve("kept.db");
  }

  private void keepZero() {
    try (Store store = open().store()) {
      store.kept().keepZero("floor", Zero.NONE);
    }
  }

  private void sql(String... statements) {
    try (Connection connection = Sql.open(kept() + "")) {
      for (String statement : statements) {
        Sql.run(connection, statement);
      }
    } catch (SQLException e) {
      throw new AssertionError(e);
    }
  }

  private static <T extends Trouble> T only(Class<T> type, Store.Opening opening) {
    List<Trouble> troubles = opening.troubles();
    assertEquals(1, troubles.size(), troubles::toString);
    return assertInstanceOf(type, troubles.get(0));
  }

  @Test
  void aFileThatIsNoDatabaseIsSetAsideUnderItsDate() throws IOException {
    Files.writeString(kept(), "not a database, and long enough to be taken for one".repeat(50));
    Store.Opening opening = open();
    SetAside aside = only(SetAside.class, opening);
    assertEquals("kept.db.damaged-2026-05-05T16-53-20", aside.movedTo().getFileName() + "");
    assertTrue(Files.readString(aside.movedTo()).startsWith("not a database"));
    assertTrue(aside.text().contains("it is not a database"), aside.text());
    try (Store store = opening.store()) {
      assertEquals(new Written.Done(), store.kept().keepZero("floor", Zero.NONE));
    }
    assertEquals(List.of(), open().troubles());
  }

  @Test
  void anEmptyFileIsSetAside() throws IOException {
    Files.createFile(kept());
    assertTrue(only(SetAside.class, open()).text().contains("it was empty"));
  }

  @Test
  void onlyTheLastDamagedFilesStay() throws IOException {
    for (int i = 0; i < 6; i++) {
      Files.writeString(kept(), "no database " + i);
      Store.Opening opening = open();
      only(SetAside.class, opening);
      opening.store().close();
    }
    try (Stream<Path> files = Files.list(directory)) {
      assertEquals(3, files.filter(file -> file.toString().contains("damaged")).count());
    }
  }

  @Test
  void anotherProgramsDatabaseIsSetAsideAndNotWrittenTo() {
    sql("CREATE TABLE theirs (a)", "INSERT INTO theirs VALUES (1)");
    SetAside aside = only(SetAside.class, open());
    assertTrue(aside.text().contains("it is not a database of ours"), aside.text());
  }

  @Test
  void aNewerVersionsFileIsLeftAsItIs() throws IOException {
    keepZero();
    sql("PRAGMA user_version=99", "PRAGMA application_id=" + (Schema.APPLICATION + 99));
    byte[] before = Files.readAllBytes(kept());
    Store.Opening opening = open();
    NotLasting trouble = only(NotLasting.class, opening);
    assertTrue(trouble.text().contains("a newer Pitchwatch made it"), trouble.text());
    try (Store store = opening.store()) {
      assertEquals(Optional.of(Zero.NONE), store.kept().zero("floor"), "still read");
      Written written = store.kept().keepZero("floor", Zero.NONE);
      assertInstanceOf(Written.NotLasting.class, written);
    }
    assertEquals(before.length, Files.readAllBytes(kept()).length);
  }

  @Test
  void aValueWhoseChecksumDoesNotFitIsNotUsed() {
    keepZero();
    sql("UPDATE kept SET value = replace(value, '1', '2') WHERE topic = 'zero'");
    Store.Opening opening = open();
    Dropped dropped = only(Dropped.class, opening);
    assertEquals("zero floor", dropped.what());
    try (Store store = opening.store()) {
      assertEquals(Optional.empty(), store.kept().zero("floor"));
    }
    assertEquals(List.of(), open().troubles(), "told once");
  }

  /** More than the cache holds, so that damage is met when it is read again. */
  private static final int TEXTS = 600;

  private void keepTexts() {
    try (Store store = open().store()) {
      store.kept().keepZero("floor", Zero.NONE);
      for (int i = 0; i < TEXTS; i++) {
        store.kept().keepText("text", "" + (1000 + i), "x".repeat(900));
      }
    }
  }

  /** Overwrites the second half of the file, and leaves its head alone. */
  private void breakSecondHalf() throws IOException {
    byte[] bytes = Files.readAllBytes(kept());
    java.util.Arrays.fill(bytes, bytes.length / 2, bytes.length, (byte) 0xAA);
    Files.write(kept(), bytes);
  }

  @Test
  void whatIsSoundInADamagedFileIsSaved() throws IOException {
    keepTexts();
    breakSecondHalf();
    Store.Opening opening = open();
    only(SetAside.class, opening);
    int saved;
    try (Store store = opening.store()) {
      saved = store.kept().texts("text").size();
    }
    assertTrue(saved > TEXTS / 10 && saved < TEXTS, saved + " saved");
    Store.Opening again = open();
    assertEquals(List.of(), again.troubles());
    try (Store store = again.store()) {
      assertEquals(saved, store.kept().texts("text").size());
    }
  }

  @Test
  void aFileThatBreaksWhileItIsOpenIsWrittenAnewInFull() throws IOException {
    keepTexts();
    try (Store store = open().store()) {
      breakSecondHalf();
      Written written = new Written.Done();
      for (int i = 0; i < TEXTS && written instanceof Written.Done; i++) {
        written = store.kept().keepText("text", "" + (1000 + i), "y");
      }
      assertInstanceOf(Written.Anew.class, written);
      assertEquals(new Written.Done(), store.kept().keepText("text", "last", "z"));
    }
    Store.Opening again = open();
    assertEquals(List.of(), again.troubles());
    try (Store store = again.store()) {
      assertEquals(Optional.of(Zero.NONE), store.kept().zero("floor"));
      assertEquals(TEXTS + 1, store.kept().texts("text").size());
    }
  }

  @Test
  void aPlaceThatCannotBeOneLastsInMemoryOnly() throws IOException {
    Path notADirectory = Files.createFile(directory.resolve("file"));
    for (Path place : List.of(notADirectory, Path.of("/proc/none"), directory.resolve("a?b"))) {
      Store.Opening opening = Store.open(place, 0, () -> 0);
      assertEquals(2, opening.troubles().size(), () -> place + ": " + opening.troubles());
      try (Store store = opening.store()) {
        assertInstanceOf(Written.NotLasting.class, store.kept().keepZero("floor", Zero.NONE));
        assertEquals(Optional.of(Zero.NONE), store.kept().zero("floor"));
        assertInstanceOf(Written.NotLasting.class, store.history().add(Minutes.numbered(1)));
        assertEquals(1, Minutes.rows(store.history(), Resolution.MINUTE).size());
      }
    }
  }

  @Test
  void aDayOfMinutesWaitsForAnotherProcessToLetGo() throws SQLException {
    try (Store store = open().store();
        Connection other = Sql.open(directory.resolve("history.db") + "")) {
      Sql.run(other, "BEGIN IMMEDIATE");
      assertInstanceOf(Written.NotLasting.class, store.history().add(Minutes.numbered(1)));
      assertEquals(0, Minutes.rows(store.history(), Resolution.MINUTE).size());
      Sql.run(other, "ROLLBACK");
      assertEquals(new Written.Done(), store.history().add(Minutes.numbered(2)));
      assertEquals(2, Minutes.rows(store.history(), Resolution.MINUTE).size());
    }
  }
}
