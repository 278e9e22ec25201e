package io.pitchwatch.sensing;

/**
 * An ADXL345 that lacks something, as a part or an emulation of one may: stands between driver and
 * simulated chip and keeps some bits from having an effect.
 */
final class LesserChip implements RegisterBus {

  private static final int INT_SOURCE = 0x30;
  private static final int DATA_FORMAT = 0x31;
  private static final int FIFO_CTL = 0x38;

  private final RegisterBus chip;
  private final boolean fifo;
  private final boolean dataReady;
  private final boolean selfTest;
  private int format;

  private LesserChip(RegisterBus chip, boolean fifo, boolean dataReady, boolean selfTest) {
    this.chip = chip;
    this.fifo = fifo;
    this.dataReady = dataReady;
    this.selfTest = selfTest;
  }

  /** Stays in bypass mode, whatever is written to FIFO_CTL. */
  static LesserChip withoutFifo(RegisterBus chip) {
    return new LesserChip(chip, false, true, true);
  }

  /** Nor does it say when its data registers are new. */
  static LesserChip withoutFifoAndDataReady(RegisterBus chip) {
    return new LesserChip(chip, false, false, true);
  }

  /** Its SELF_TEST bit can be set and moves nothing. */
  static LesserChip withoutSelfTest(RegisterBus chip) {
    return new LesserChip(chip, true, true, false);
  }

  @Override
  public BusOutcome read(int register, byte[] into, int length) {
    BusOutcome outcome = chip.read(register, into, length);
    for (int i = 0; i < length; i++) {
      if (register + i == INT_SOURCE && !dataReady) {
        into[i] &= 0x7F;
      }
      if (register + i == DATA_FORMAT && !selfTest) {
        into[i] |= (byte) (format & 0x80);
      }
    }
    return outcome;
  }

  @Override
  public BusOutcome write(int register, int value) {
    if (register == FIFO_CTL && !fifo) {
      return BusOutcome.Common.DONE;
    }
    if (register == DATA_FORMAT && !selfTest) {
      format = value;
      return chip.write(register, value & 0x7F);
    }
    return chip.write(register, value);
  }
}
