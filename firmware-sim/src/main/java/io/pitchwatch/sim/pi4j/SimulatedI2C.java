package io.pitchwatch.sim.pi4j;

import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CBase;
import com.pi4j.io.i2c.I2CConfig;
import io.pitchwatch.sim.bus.Slice;
import java.util.Objects;

/**
 * One address on a simulated bus. Every call is one transfer on the wire, except {@code writeRead}
 * of the interface, which is two, as it is with linuxfs. Values returned follow linuxfs 2.8.0: what
 * was read or the number of bytes moved.
 */
final class SimulatedI2C extends I2CBase<SimulatedI2CBus> implements I2C {

  SimulatedI2C(SimulatedI2CProvider provider, I2CConfig config, SimulatedI2CBus bus) {
    super(provider, config, bus);
  }

  @Override
  public int read() {
    byte[] one = new byte[1];
    read(one, 0, 1);
    return one[0] & 0xff;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) {
    i2CBus.transfer(this, Slice.NONE, new Slice(buffer, offset, length));
    return length;
  }

  @Override
  public int write(byte value) {
    return write(new byte[] {value}, 0, 1);
  }

  @Override
  public int write(byte[] data, int offset, int length) {
    i2CBus.transfer(this, new Slice(data, offset, length), Slice.NONE);
    return length;
  }

  @Override
  public int readRegister(int register) {
    byte[] one = new byte[1];
    readRegister(register, one, 0, 1);
    return one[0] & 0xff;
  }

  @Override
  public int readRegister(int register, byte[] buffer, int offset, int length) {
    return readRegister(new byte[] {(byte) register}, buffer, offset, length);
  }

  /** Like linuxfs 2.8.0 it puts the answer at the buffer's start, whatever the offset. */
  @Override
  public int readRegister(byte[] register, byte[] buffer, int offset, int length) {
    Objects.checkFromIndexSize(offset, length, buffer.length);
    i2CBus.transfer(this, new Slice(register, 0, register.length), new Slice(buffer, 0, length));
    return length;
  }

  @Override
  public int writeRegister(int register, byte value) {
    return write(new byte[] {(byte) register, value}, 0, 2);
  }

  @Override
  public int writeRegister(int register, byte[] data, int offset, int length) {
    return writeRegister(new byte[] {(byte) register}, data, offset, length);
  }

  @Override
  public int writeRegister(byte[] register, byte[] data, int offset, int length) {
    Objects.checkFromIndexSize(offset, length, data.length);
    byte[] all = new byte[register.length + length];
    System.arraycopy(register, 0, all, 0, register.length);
    System.arraycopy(data, offset, all, register.length, length);
    return write(all, 0, all.length);
  }
}
