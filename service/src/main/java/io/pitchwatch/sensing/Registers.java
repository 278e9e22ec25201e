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

  /** Whether a chip's identity register holds what the data sheet says. */
  static ChipOutcome identity(RegisterBus bus, String chip, int register, int expected) {
    byte[] held = new byte[1];
    BusOutcome read = bus.read(register, held, 1);
    return read.ok() && (held[0] & 0xFF) != expected
        ? stranger(chip, register, expected, held[0])
        : ChipOutcome.of(read);
  }

  /**
   * Whether registers hold what was written to them; tells of the first that does not.
   *
   * @param held what neighbouring registers hold
   * @param first the first of them
   * @param pairs register, value, register, value…
   */
  static ChipOutcome hold(byte[] held, int first, int... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      int found = held[pairs[i] - first] & 0xFF;
      if (found != pairs[i + 1]) {
        return disobeyed(pairs[i], pairs[i + 1], found);
      }
    }
    return ChipOutcome.Plain.DONE;
  }

  /** Whether neighbouring registers, read into the buffer, all hold 0: offsets, as a rule. */
  static ChipOutcome zeros(RegisterBus bus, int first, byte[] into) {
    BusOutcome read = bus.read(first, into, into.length);
    for (int i = 0; i < into.length && read.ok(); i++) {
      if (into[i] != 0) {
        return disobeyed(first + i, 0, into[i]);
      }
    }
    return ChipOutcome.of(read);
  }

  static ChipOutcome disobeyed(int register, int written, int read) {
    return new ChipOutcome.Disobeyed(
        String.format(
            "register 0x%02X holds 0x%02X where 0x%02X was written",
            register, read & 0xFF, written));
  }

  private static ChipOutcome stranger(String chip, int register, int expected, int found) {
    return new ChipOutcome.Stranger(
        String.format(
            "not an %s: identity register 0x%02X holds 0x%02X, not 0x%02X",
            chip, register, found & 0xFF, expected));
  }
}
