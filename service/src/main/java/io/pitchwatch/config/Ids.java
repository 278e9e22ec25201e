package io.pitchwatch.config;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Ids are names: no two tables of a kind may share one. */
final class Ids {

  private Ids() {}

  /** Notes every id that an earlier table of the list has already. */
  static void refuseRepeats(List<Section> sections, List<String> ids) {
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < sections.size(); i++) {
      if (sections.get(i).sound("id") && !taken.add(ids.get(i))) {
        sections.get(i).fault("id", Found.quoted(ids.get(i)) + " again", "an id not used before");
      }
    }
  }
}
