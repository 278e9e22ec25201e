package io.pitchwatch.config;

import java.util.List;

/** What came of reading the owner's file. */
public sealed interface ConfigOutcome {

  /** The file is good. */
  record Good(Config config) implements ConfigOutcome {}

  /**
   * The file has faults; nothing of it is used.
   *
   * @param faults every one of them, in the order of the file; at least one
   */
  record Faulty(List<ConfigFault> faults) implements ConfigOutcome {

    /** Copies the list. */
    public Faulty {
      faults = List.copyOf(faults);
    }
  }
}
