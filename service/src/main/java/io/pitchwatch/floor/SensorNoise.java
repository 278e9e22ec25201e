package io.pitchwatch.floor;

/**
 * What the datasheet says of a chip's noise: the yardstick for everything the filter judges.
 *
 * @param densityG white noise, g/√Hz, one-sided, of the noisiest axis that lies in the floor
 * @param rateHz nominal samples per second, 25 to 500 Hz
 * @param resolutionG one count, g; 0 when it is far below the noise
 */
public record SensorNoise(double densityG, double rateHz, double resolutionG) {

  /** Slowest and fastest sampling the filter is made for, Hz. */
  public static final double SLOWEST_HZ = 20;

  /** See {@link #SLOWEST_HZ}. */
  public static final double FASTEST_HZ = 1000;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the density is not above zero, the rate outside 20 to 1000
   *     Hz, or the resolution negative; NaN likewise
   */
  public SensorNoise {
    if (!(densityG > 0) || Double.isInfinite(densityG)) {
      throw new IllegalArgumentException("densityG is " + densityG + "; it must be above 0");
    }
    if (!(rateHz >= SLOWEST_HZ && rateHz <= FASTEST_HZ)) {
      throw new IllegalArgumentException(
          "rateHz is " + rateHz + "; it must be " + SLOWEST_HZ + " to " + FASTEST_HZ);
    }
    if (!(resolutionG >= 0) || Double.isInfinite(resolutionG)) {
      throw new IllegalArgumentException(
          "resolutionG is " + resolutionG + "; it must be 0 or more");
    }
  }

  /**
   * Spread of single samples, g, one standard deviation: noise up to half the rate, and the
   * rounding of a count, q/√12.
   */
  public double sampleG() {
    return Math.sqrt(densityG * densityG * rateHz / 2 + resolutionG * resolutionG / 12);
  }

  /**
   * What rounding to counts leaves in the longest mean, g, one standard deviation over all leans:
   * q/π · exp(−2π²σ²/q²)/√2, the first term of the Fourier series of the mean of a rounded normal
   * value (B. Widrow, I. Kollár, Quantization Noise, 2008, from memory). Noise of half a count and
   * more makes it vanish.
   *
   * @param spreadG standard deviation of single samples as they came, rounding included, g; the
   *     chip's own noise is taken where that is more
   */
  public double roundingG(double spreadG) {
    if (resolutionG == 0) {
      return 0;
    }
    double q2 = resolutionG * resolutionG;
    double inCounts = Math.max(densityG * densityG * rateHz / 2, spreadG * spreadG - q2 / 12) / q2;
    return resolutionG / Math.PI * Math.exp(-2 * Math.PI * Math.PI * inCounts) / Math.sqrt(2);
  }

  /**
   * What averaging leaves, radians of tilt near level: N/√(2T) for white noise of density N.
   *
   * @param seconds length of the average, s, above 0
   */
  public double boundRad(double seconds) {
    return densityG / Math.sqrt(2 * seconds);
  }
}
