package io.pitchwatch.sensing;

/** How a driver's dealing with its chip went. */
public sealed interface ChipOutcome {

  /** What happened, in a few words for people. */
  String text();

  /** Whether it went as asked. */
  default boolean ok() {
    return this == Plain.DONE;
  }

  /** The outcomes that need no further words. */
  enum Plain implements ChipOutcome {
    /** As asked. */
    DONE("done"),
    /** The chip is back at its reset values: its supply dipped, or somebody else reset it. */
    SETTINGS_LOST("the chip lost its settings, as after a dip of its supply");

    private final String text;

    Plain(String text) {
      this.text = text;
    }

    @Override
    public String text() {
      return text;
    }
  }

  /**
   * A transaction failed.
   *
   * @param bus how
   */
  record OffBus(BusOutcome bus) implements ChipOutcome {
    @Override
    public String text() {
      return bus.text();
    }
  }

  /**
   * Something answers, but not the chip that was expected.
   *
   * @param text what was expected and what was found
   */
  record Stranger(String text) implements ChipOutcome {}

  /**
   * A register does not hold what was written to it.
   *
   * @param text which, what was written and what was read
   */
  record Disobeyed(String text) implements ChipOutcome {}

  /** The outcome of a step that was one transaction. */
  static ChipOutcome of(BusOutcome bus) {
    return bus.ok() ? Plain.DONE : new OffBus(bus);
  }
}
