package io.pitchwatch.command;

import io.pitchwatch.sensing.BusOutcome;
import io.pitchwatch.sensing.RegisterBus;

/** A wire between the bus and one chip that can come loose. */
final class LooseWire implements RegisterBus {

  private final RegisterBus bus;
  boolean loose;

  LooseWire(RegisterBus bus) {
    this.bus = bus;
  }

  @Override
  public BusOutcome read(int register, byte[] into, int length) {
    return loose ? BusOutcome.Common.NO_ACKNOWLEDGE : bus.read(register, into, length);
  }

  @Override
  public BusOutcome write(int register, int value) {
    return loose ? BusOutcome.Common.NO_ACKNOWLEDGE : bus.write(register, value);
  }
}
