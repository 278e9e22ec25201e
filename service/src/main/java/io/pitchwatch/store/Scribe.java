package io.pitchwatch.store;

import java.util.function.Supplier;

/** Has something written, on whatever thread, and is back once it is, or could not be. */
public interface Scribe {

  /** What came of the writing. */
  Written write(Supplier<Written> writing);
}
