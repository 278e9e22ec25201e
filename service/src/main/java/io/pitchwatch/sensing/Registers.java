package io.pitchwatch.sensing;

/** What drivers do with registers alike. */
final class Registers {

  private Registers() {}

  /**
   * Writes registers one after the other, until one fails.
   *
   * @param pairs register, value, register, value…
   */
  static BusOutcome writeAll(RegisterBus bus, int... pairs) {
    BusOutcome last = BusOutcome.Common.DONE;
    for (int i = 0; i < pairs.length && last.ok(); i += 2) {
      last = bus.write(pairs[i], pairs[i + 1]);
    }
    return last;
  }

  static ChipOutcome disobeyed(int register, int written, int read) {
    return new ChipOutcome.Disobeyed(
        String.format(
            "register 0x%02X holds 0x%02X where 0x%02X was written",
            register, read & 0xFF, written));
  }

  static ChipOutcome stranger(String chip, int register, int expected, int found) {
    return new ChipOutcome.Stranger(
        String.format(
            "not an %s: identity register 0x%02X holds 0x%02X, not 0x%02X",
            chip, register, found & 0xFF, expected));
  }
}
