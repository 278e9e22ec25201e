package io.pitchwatch.sim.chip;

import java.util.SplittableRandom;

/** What goes wrong inside a chip while its bus works; switched at will, from any thread. */
public final class Flaws {

  private final SplittableRandom random;
  private boolean frozen;
  private double spikeShare;
  private double spikeG;

  /**
   * A chip with nothing wrong.
   *
   * @param seed of the draw of spikes
   */
  public Flaws(long seed) {
    random = new SplittableRandom(seed);
  }

  /**
   * Makes the chip answer the same data words for ever while it still seems to sample.
   *
   * @param stands whether the words stand still
   */
  public synchronized void frozen(boolean stands) {
    frozen = stands;
  }

  /**
   * Makes a share of the samples wild.
   *
   * @param share 0 (none) to 1 (all)
   * @param sizeG how far a wild sample lies off, on one axis drawn at random, g
   * @throws IllegalArgumentException if the share is outside 0 to 1 or the size is not finite
   */
  public synchronized void spikes(double share, double sizeG) {
    if (!(share >= 0 && share <= 1) || !Double.isFinite(sizeG)) {
      throw new IllegalArgumentException(
          "share is " + share + ", size " + sizeG + " g; share 0 to 1 and a finite size allowed");
    }
    spikeShare = share;
    spikeG = sizeG;
  }

  /** Mends everything. */
  public synchronized void clear() {
    frozen = false;
    spikeShare = 0;
  }

  synchronized boolean isFrozen() {
    return frozen;
  }

  /** Adds a spike to a sample if one is due. */
  synchronized void disturb(double[] sampleG) {
    if (spikeShare > 0 && random.nextDouble() < spikeShare) {
      sampleG[random.nextInt(3)] += random.nextBoolean() ? spikeG : -spikeG;
    }
  }
}
