package io.pitchwatch.sensing;

/** A bus on which nobody answers. */
final class NoBus implements RegisterBus {

  @Override
  public BusOutcome read(int register, byte[] into, int length) {
    return BusOutcome.Common.NO_ACKNOWLEDGE;
  }

  @Override
  public BusOutcome write(int register, int value) {
    return BusOutcome.Common.NO_ACKNOWLEDGE;
  }
}
