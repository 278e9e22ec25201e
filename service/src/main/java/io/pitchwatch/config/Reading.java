package io.pitchwatch.config;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What reading one file has brought so far.
 *
 * @param faults what was wrong
 * @param asked every key that was looked for, by its path without numbers: the keys there are
 */
record Reading(Faults faults, Map<String, Asked> asked) {

  /**
   * What was asked of a key.
   *
   * @param limits what it may be, for people
   * @param fallback its default as the file would write it; empty when there is none
   */
  record Asked(String limits, String fallback) {}

  Reading(String file) {
    this(new Faults(file), new LinkedHashMap<>());
  }
}
