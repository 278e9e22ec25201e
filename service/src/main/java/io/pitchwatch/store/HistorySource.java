package io.pitchwatch.store;

import java.util.Optional;
import java.util.function.Consumer;

/** History to be read. */
public interface HistorySource {

  /**
   * Brings rows in the order in which they happened.
   *
   * @param sink gets each row; it must not write to the store
   * @return what stopped the reading half way, for people, if anything did
   */
  Optional<String> rows(HistoryQuery query, Consumer<HistoryRow> sink);

  /** Brings the events of the query's time likewise. */
  Optional<String> events(HistoryQuery query, Consumer<HistoryEvent> sink);
}
