package io.pitchwatch.sim.chip;

import io.pitchwatch.sim.bus.Target;

/**
 * Puts a register file on the bus: the first byte written sets the pointer, further ones are
 * written where it points; reads begin where it points; it moves on after each byte.
 */
public final class RegisterPointer implements Target {

  private final RegisterFile registers;
  private int pointer;
  private boolean pointerFollows;

  RegisterPointer(RegisterFile registers) {
    this.registers = registers;
  }

  @Override
  public void start(boolean read) {
    registers.transferBegins();
    pointerFollows = !read;
  }

  @Override
  public void receive(int value) {
    if (pointerFollows) {
      pointer = value;
      pointerFollows = false;
    } else {
      registers.writeRegister(pointer, value);
      pointer = registers.following(pointer);
    }
  }

  @Override
  public int send() {
    int value = registers.readRegister(pointer);
    pointer = registers.following(pointer);
    return value;
  }

  @Override
  public void stop() {
    registers.transferEnds();
  }
}
