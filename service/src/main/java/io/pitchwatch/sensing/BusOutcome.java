package io.pitchwatch.sensing;

/** How a transaction went. */
public sealed interface BusOutcome {

  /** What happened, in a few words for people. */
  String text();

  /** Whether the transaction was carried out; only then are its bytes valid. */
  default boolean ok() {
    return this == Common.DONE;
  }

  /** The outcomes that need no further words, and so no allocation. */
  enum Common implements BusOutcome {
    /** Carried out. */
    DONE("done"),
    /** Nobody answered at the address: chip absent, unpowered, or wired to its other address. */
    NO_ACKNOWLEDGE("no chip answers at this address"),
    /** A line is held, or another user of the bus holds it. */
    BUSY("the bus is busy or a line of it is stuck"),
    /** The controller gave up waiting. */
    TIMED_OUT("the bus timed out");

    private final String text;

    Common(String text) {
      this.text = text;
    }

    @Override
    public String text() {
      return text;
    }
  }

  /**
   * Anything else, such as a bus that does not exist here.
   *
   * @param text what happened and, where known, what to do about it
   */
  record Failed(String text) implements BusOutcome {}
}
