package io.pitchwatch.sim.chip;

/** Registers behind an address pointer, as most chips have them. */
interface RegisterFile {

  /** A transfer begins: the chip brings its registers up to date. */
  void transferBegins();

  /**
   * Reads a register.
   *
   * @param address 0 to 255
   * @return 0 to 255; 0 where the chip has nothing
   */
  int readRegister(int address);

  /**
   * Writes a register; without effect where it is read-only.
   *
   * @param address 0 to 255
   * @param value 0 to 255
   */
  void writeRegister(int address, int value);

  /** Where the pointer goes after a register was read or written. */
  int following(int address);

  /** The transfer ended. */
  void transferEnds();
}
