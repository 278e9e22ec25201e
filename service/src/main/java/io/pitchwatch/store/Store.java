package io.pitchwatch.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;

/**
 * All that must survive a power cut, in one directory: {@code kept.db} and {@code history.db},
 * where every write waits for the disk. Whatever state the files are in, there is a store; what is
 * wrong is told. Not thread-safe, and as slow as the disk: keep it off the thread that samples.
 */
public final class Store implements AutoCloseable {

  /** Name of the file of what must not be lost. */
  static final String KEPT = "kept.db";

  /** Name of the history's file. */
  static final String HISTORY = "history.db";

  /** Name of the directory for SQLite's native code. */
  static final String NATIVE = "native";

  private final KeptFile keptFile;
  private final Database historyFile;
  private final Kept kept;
  private final SiteBook siteBook;
  private final History history;

  private Store(KeptFile keptFile, Database historyFile, long startNanos) {
    this.keptFile = keptFile;
    this.historyFile = historyFile;
    kept = new Kept(keptFile);
    siteBook = new SiteBook(keptFile);
    history = new History(historyFile, startNanos);
  }

  /**
   * A store, and what to say aloud about it.
   *
   * @param store ready for use
   * @param troubles what was set aside or dropped, and whether it lasts
   */
  public record Opening(Store store, List<Trouble> troubles) {

    /** Copies the list. */
    public Opening {
      troubles = List.copyOf(troubles);
    }
  }

  /**
   * Opens the store, making what is not there yet.
   *
   * @param directory where its files are
   * @param startNanos monotonic time from which this run's history is counted
   * @param wallSeconds seconds since 1970, only to label what is set aside
   */
  public static Opening open(Path directory, long startNanos, LongSupplier wallSeconds) {
    Path absolute = directory.toAbsolutePath();
    NativeLibrary.keepIn(absolute.resolve(NATIVE));
    List<Trouble> troubles = new ArrayList<>();
    KeptFile kept = KeptFile.open(absolute.resolve(KEPT), wallSeconds, troubles);
    Database history =
        Database.open(
            absolute.resolve(HISTORY), HistoryTables.SCHEMA, file -> {}, wallSeconds, troubles);
    return new Opening(new Store(kept, history, startNanos), troubles);
  }

  /** A store that ends with the process, and says so to nobody: for trials and simulations. */
  public static Store inMemory(long startNanos) {
    return new Store(KeptFile.inMemory(), Database.inMemory(HistoryTables.SCHEMA), startNanos);
  }

  /** From now on it is this one that has written what must not be lost. */
  public void writeBy(Scribe scribe) {
    keptFile.writeBy(scribe);
  }

  /** Zeros, the visit, alarms and whatever else must not be lost. */
  public Kept kept() {
    return kept;
  }

  /** The visits to sites. */
  public SiteBook siteBook() {
    return siteBook;
  }

  /** The floor's lean over time. */
  public History history() {
    return history;
  }

  /** Closes the files as a power cut would: what waits to be written is lost. */
  public void abandon() {
    keptFile.abandon();
    historyFile.close();
  }

  /** Writes all that waits and closes the files. */
  @Override
  public void close() {
    history.flush();
    keptFile.close();
    historyFile.close();
  }
}
