package io.pitchwatch.config;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The faults of one file as they are found. */
final class Faults {

  private final String file;
  private final List<ConfigFault> found = new ArrayList<>();
  private boolean broken;

  Faults(String file) {
    this.file = file;
  }

  void add(int line, String key, String what, String allowed) {
    found.add(new ConfigFault(file, line, key, what, allowed));
  }

  /** A place that TOML itself cannot read; what seems to be missing may stand there. */
  void syntax(int line, String what) {
    broken = true;
    add(line, "", what.substring(0, 1).toLowerCase(Locale.ROOT) + what.substring(1), "TOML");
  }

  /** Something required is absent; not said where a line could not be read. */
  void missing(int line, String key, String allowed) {
    if (!broken) {
      add(line, key, "nothing", allowed);
    }
  }

  boolean none() {
    return found.isEmpty() && !broken;
  }

  /** In the order of the file. */
  List<ConfigFault> list() {
    List<ConfigFault> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingInt(ConfigFault::line));
    return sorted;
  }
}
