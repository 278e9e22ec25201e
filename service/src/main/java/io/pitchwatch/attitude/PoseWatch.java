package io.pitchwatch.attitude;

import java.util.Optional;

/**
 * Finds the poses in a stream of raw samples: the stretches in which a chip is held still.
 *
 * <p>Samples are condensed into means of 0.2 s. A pose begins with a block that spreads little more
 * than the chip's own noise, and goes on while every block agrees with the mean of those before.
 * Memory and time per sample are constant; taking a sample allocates nothing.
 */
public final class PoseWatch {

  /** So long must a chip be held still for a pose, nanoseconds: 2 s. */
  public static final long HELD_NANOS = 2_000_000_000L;

  private static final long BLOCK_NANOS = 200_000_000L;

  /** Spread of a still block over the chip's noise: few of a thousand still ones have more. */
  private static final double LOUD = 2;

  private static final double STRAYS = 5;
  private static final int FEWEST_SAMPLES = 3;

  /** A pause this long in the samples ends a pose. */
  private static final long GAP_NANOS = 500_000_000L;

  private final double noise;
  private final double tolerated;
  private final double[] sum = new double[3];
  private final double[] squares = new double[3];
  private final double[] first = new double[3];
  private final double[] mean = new double[3];
  private final double[] block = new double[3];
  private int samples;
  private int blockSamples;
  private int blocks;
  private long blockStart;
  private long lastNanos;
  private boolean started;

  /**
   * A watch over one chip.
   *
   * @param noise standard deviation of its single samples when still, raw units
   * @param tolerated motion below this does not count, raw units: 1 mg is 0.06 deg
   * @throws IllegalArgumentException if either is not above 0
   */
  public PoseWatch(double noise, double tolerated) {
    if (!(noise > 0) || !(tolerated > 0)) {
      throw new IllegalArgumentException(
          "noise is " + noise + " and tolerated " + tolerated + "; both must be above 0");
    }
    this.noise = noise;
    this.tolerated = tolerated;
  }

  /** Forgets the pose so far. */
  public void restart() {
    started = false;
    blocks = 0;
    samples = 0;
  }

  /**
   * Takes one raw sample.
   *
   * @param nanos monotonic time at which it was taken
   * @param x raw; one that is not finite is left out
   * @param y raw
   * @param z raw
   */
  public void accept(long nanos, double x, double y, double z) {
    if (!Double.isFinite(x + y + z)) {
      return;
    }
    if (!started || nanos - lastNanos > GAP_NANOS) {
      restart();
      started = true;
      begin(nanos, x, y, z);
    } else if (nanos - blockStart >= BLOCK_NANOS) {
      close();
      begin(nanos, x, y, z);
    }
    lastNanos = nanos;
    add(0, x);
    add(1, y);
    add(2, z);
    blockSamples++;
  }

  /** Sums are of differences to the first sample, lest digits are lost in counts. */
  private void begin(long nanos, double x, double y, double z) {
    blockStart = nanos;
    blockSamples = 0;
    first[0] = x;
    first[1] = y;
    first[2] = z;
    for (int axis = 0; axis < 3; axis++) {
      sum[axis] = 0;
      squares[axis] = 0;
    }
  }

  private void add(int axis, double value) {
    double d = value - first[axis];
    sum[axis] += d;
    squares[axis] += d * d;
  }

  private void close() {
    if (blockSamples < FEWEST_SAMPLES) {
      return;
    }
    boolean quiet = true;
    boolean agrees = true;
    double error = noise * Math.sqrt(1.0 / blockSamples + 1.0 / Math.max(1, samples));
    for (int axis = 0; axis < 3; axis++) {
      double d = sum[axis] / blockSamples;
      block[axis] = first[axis] + d;
      double variance = Math.max(0, squares[axis] / blockSamples - d * d);
      quiet &= Math.sqrt(variance) <= LOUD * noise + tolerated;
      agrees &= Math.abs(block[axis] - mean[axis]) <= STRAYS * error + tolerated;
    }
    if (blocks == 0 || !quiet || !agrees) {
      samples = 0;
      blocks = 0;
    }
    if (quiet) {
      samples += blockSamples;
      blocks++;
      for (int axis = 0; axis < 3; axis++) {
        mean[axis] += (block[axis] - mean[axis]) * blockSamples / samples;
      }
    }
  }

  /** For how long the chip has been held still, nanoseconds, in steps of 0.2 s. */
  public long heldNanos() {
    return blocks * BLOCK_NANOS;
  }

  /** The pose in which it is held; none while it moves, or was not held long enough yet. */
  public Optional<Pose> pose() {
    return heldNanos() >= HELD_NANOS
        ? Optional.of(new Pose(mean[0], mean[1], mean[2], noise / Math.sqrt(samples)))
        : Optional.empty();
  }
}
