package io.pitchwatch.store;

import java.nio.file.Path;

/** What keeps something from lasting, or has kept it from it; to be said aloud. */
public sealed interface Trouble {

  /** One sentence for people: what, where, and what to do where anything can be done. */
  String text();

  /**
   * A file was damaged; it lies beside the new one for whoever wants to look.
   *
   * @param file where it was
   * @param movedTo where it is now
   * @param why what was wrong with it
   */
  record SetAside(Path file, Path movedTo, String why) implements Trouble {
    @Override
    public String text() {
      return file
          + " was damaged ("
          + why
          + "); it was set aside as "
          + movedTo.getFileName()
          + ".";
    }
  }

  /**
   * What is written now will be gone after a restart.
   *
   * @param file where it should be
   * @param why what is in the way
   */
  record NotLasting(Path file, String why) implements Trouble {
    @Override
    public String text() {
      return file + " cannot be written (" + why + "): what changes now is lost at the next start.";
    }
  }

  /**
   * One value came back other than it was written, and is not used.
   *
   * @param file where it was
   * @param what which value
   */
  record Dropped(Path file, String what) implements Trouble {
    @Override
    public String text() {
      return file + " holds a damaged value of " + what + "; it is not used: set it anew.";
    }
  }
}
