package io.pitchwatch.sim.bus;

/**
 * What answers at an address: one chip, as the wire sees it.
 *
 * <p>A transfer is {@link #start(boolean)}, then bytes one way, perhaps a repeated start and bytes
 * the other way, then {@link #stop()} (UM10204, the I2C-bus specification, section 3.1).
 */
public interface Target {

  /**
   * A start, or repeated start, addressed to this chip.
   *
   * @param read whether the controller wants to read
   */
  void start(boolean read);

  /**
   * The controller sends a byte.
   *
   * @param value 0 to 255
   */
  void receive(int value);

  /**
   * The controller clocks a byte out of the chip.
   *
   * @return 0 to 255
   */
  int send();

  /** The transfer ends. */
  void stop();
}
