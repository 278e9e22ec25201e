package io.pitchwatch.bus;

import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.io.i2c.I2CProvider;
import io.pitchwatch.sensing.BusOutcome;
import io.pitchwatch.sensing.RegisterBus;
import org.jspecify.annotations.Nullable;

/** One chip through Pi4J. */
final class Pi4jRegisters implements RegisterBus {

  private final Pi4jBus buses;
  private final int bus;
  private final int address;
  private final String id;
  private @Nullable I2C device;

  Pi4jRegisters(Pi4jBus buses, int bus, int address) {
    this.buses = buses;
    this.bus = bus;
    this.address = address;
    this.id = String.format("i2c-%d-0x%02x", bus, address);
  }

  @Override
  public BusOutcome read(int register, byte[] into, int length) {
    try {
      I2C open = open();
      if (open == null) {
        return new BusOutcome.Failed(buses.missing());
      }
      // Pi4J's kernel provider ignores the offset; 0 is the one that always works.
      int got = open.readRegister(register, into, 0, length);
      return got < 0 ? new BusOutcome.Failed("the read returned " + got) : BusOutcome.Common.DONE;
    } catch (RuntimeException | LinkageError e) {
      return failed(e);
    }
  }

  @Override
  public BusOutcome write(int register, int value) {
    try {
      I2C open = open();
      if (open == null) {
        return new BusOutcome.Failed(buses.missing());
      }
      open.writeRegister(register, (byte) value);
      return BusOutcome.Common.DONE;
    } catch (RuntimeException | LinkageError e) {
      return failed(e);
    }
  }

  private @Nullable I2C open() {
    I2CProvider provider = buses.provider();
    if (device == null && provider != null) {
      forget();
      I2CConfig config =
          I2C.newConfigBuilder(buses.context()).id(id).bus(bus).device(address).build();
      device = provider.create(config);
    }
    return device;
  }

  /** Pi4J refuses to create what its registry still holds, even when it was closed. */
  private void forget() {
    if (buses.context().registry().exists(id)) {
      buses.context().registry().remove(id);
    }
  }

  private BusOutcome failed(Throwable e) {
    boolean neverOpened = device == null;
    if (BusFaults.isGone(e)) {
      device = null;
      buses.reopen();
    }
    if (neverOpened && buses.linux()) {
      return new BusOutcome.Failed(LinuxBus.diagnose(bus, e));
    }
    return BusFaults.outcome(e);
  }
}
