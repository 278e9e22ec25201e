package io.pitchwatch.sensing;

/**
 * One chip on one bus, as its registers; all that a driver sees of the world.
 *
 * <p>Every call is one transaction and returns how it went; none throws for what a bus can do. An
 * implementation is used by one thread at a time.
 */
public interface RegisterBus {

  /**
   * Reads a run of registers in one transaction: register address, repeated start, data.
   *
   * @param register address of the first register, 0 to 255; whether the chip steps on to the next
   *     or gives the same one again (a FIFO) is the chip's affair
   * @param into where the bytes go, from index 0; untouched or partly written unless the outcome is
   *     {@link BusOutcome.Done}
   * @param length how many bytes, 1 to {@code into.length}
   */
  BusOutcome read(int register, byte[] into, int length);

  /**
   * Writes one register.
   *
   * @param register address, 0 to 255
   * @param value the byte, 0 to 255
   */
  BusOutcome write(int register, int value);
}
