package io.pitchwatch.floor;

/**
 * Chips to check against: noise density of the axes that lie in the floor, and one count, as their
 * datasheets give them.
 */
enum Chip {
  /** Rev. E, p. 33: 290 µg/√Hz on x and y, 3.9 mg per count. */
  ADXL345(290e-6, 1 / 256.0),
  /** DocID17530 Rev 2: 220 µg/√Hz (from memory), 1 mg per count in high resolution. */
  LIS3DH(220e-6, 1e-3),
  /** PS-MPU-6000A-00 Rev 3.4, 6.2: 400 µg/√Hz, 16384 counts per g. */
  MPU6050(400e-6, 1 / 16384.0),
  /** Rev. A and later: 22.5 µg/√Hz, 256000 counts per g. */
  ADXL355(22.5e-6, 1 / 256000.0);

  final double densityG;
  final double countG;

  Chip(double densityG, double countG) {
    this.densityG = densityG;
    this.countG = countG;
  }

  SensorNoise noise(double rateHz) {
    return new SensorNoise(densityG, rateHz, countG);
  }
}
