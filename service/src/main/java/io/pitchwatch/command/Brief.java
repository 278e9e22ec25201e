package io.pitchwatch.command;

import java.util.Set;

/** A timeline without figures. */
final class Brief implements Timeline {

  private static final Set<String> WORDS =
      Set.of("$state", "floor/verdict", "ground/settling", "visit/stay", "visit/site");

  private final Timeline whole;

  Brief(Timeline whole) {
    this.whole = whole;
  }

  @Override
  public void begin(Title title) {
    whole.begin(title);
  }

  @Override
  public void add(Entry entry) {
    boolean figure = entry.kind() == Kind.PUBLISHED && !WORDS.contains(entry.topic());
    boolean again = entry.change().equals("changed");
    if (!figure && !again) {
      whole.add(entry);
    }
  }

  @Override
  public void end(Summary summary) {
    whole.end(summary);
  }
}
