package io.pitchwatch.sim.chip;

/**
 * What a chip's filter does at its present settings.
 *
 * @param cornerHz where it is 3 dB down for motion, Hz
 * @param noiseHz noise of density N comes out with the standard deviation N·√noiseHz
 * @param memory correlation of the noise from one sample to the next, 0 to below 1
 */
record Band(double cornerHz, double noiseHz, double memory) {

  /**
   * A filter with its corner at half the output rate: noise comes out white, and the mean of T
   * seconds of it has N/√(2T).
   */
  static Band half(double rateHz) {
    return new Band(rateHz / 2, rateHz / 2, 0);
  }

  /**
   * A decimating filter with its corner at a quarter of the output rate: half the variance at the
   * same density at 0 Hz, hence a correlation of one third.
   */
  static Band quarter(double rateHz) {
    return new Band(rateHz / 4, rateHz / 4, 1.0 / 3);
  }

  /**
   * A one-pole filter that runs at an inner rate; every so many of its values are put out. What
   * noise lies above half the output rate folds down.
   */
  static Band onePole(double cornerHz, double innerHz, double rateHz) {
    double inner = Math.exp(-2 * Math.PI * cornerHz / innerHz);
    return new Band(
        cornerHz,
        innerHz / 2 * (1 - inner) / (1 + inner),
        Math.exp(-2 * Math.PI * cornerHz / rateHz));
  }
}
