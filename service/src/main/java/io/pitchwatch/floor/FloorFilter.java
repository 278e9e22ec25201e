package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;

/**
 * How the floor leans, from the stream of samples of one accelerometer: a live figure that follows
 * 90 % of a step within 0.7 s, and a steady one as good as the noise allows, with its standard
 * error. docs/physics.md section 2 derives both.
 *
 * <p>Samples come in the coach's axes (x forward, y left, z up), at 20 to 1000 Hz, evenly or in
 * bursts; gaps are bridged. Every 0.2 s they are condensed into one smooth block that no third of
 * wild samples moves and that is deaf to an idling engine; all else works on these blocks. Memory
 * is bounded, time per sample constant, and taking a sample allocates nothing. Not safe for use by
 * several threads at once.
 */
public final class FloorFilter {

  /** Without a good sample for this long, nothing is known. */
  public static final long UNKNOWN_AFTER_NANOS = 4_000_000_000L;

  private static final long WIDTH_NANOS = 3 * SampleBlock.HOP_NANOS;
  private static final Lean NONE = new Lean(Double.NaN, Double.NaN);

  /** Two seconds of rest, before which no mean is called steady. */
  private static final int FEWEST_BLOCKS = 10;

  /**
   * Largest standard error that is still called steady: two fifths of the strictest stay's
   * tolerance. A bus's engine idling at 22 mg leaves about half of it after a few seconds.
   */
  private static final double TRUSTWORTHY_RAD = Math.toRadians(0.1);

  /** A change within 1.6 s that people cannot make by walking about. */
  private static final double CHANGING_G = 0.9e-3;

  /** Blocks left out because their samples disagreed, before they are believed nevertheless. */
  private static final int MOST_UNCLEAR = 5;

  private static final double ALIKE = 1.5;

  private final SensorNoise chip;
  private final SampleBlock block;
  private final RestDetector rest;
  private final Restlessness noise;
  private final SteadyMean steady = new SteadyMean();
  private final double blockNoiseG;
  private final double[] live = new double[3];

  private boolean started;
  private boolean known;
  private boolean wasResting;
  private int unclear;
  private int sinceChange = FEWEST_BLOCKS;
  private long lastNanos;
  private long nextNanos;
  private double systematicRad;

  /**
   * A filter that knows nothing yet.
   *
   * @param chip the chip's own noise
   */
  public FloorFilter(SensorNoise chip) {
    double hopVariance = (chip.sampleG() * chip.sampleG()) / (chip.rateHz() * SampleBlock.HOP_S);
    blockNoiseG = Math.sqrt(0.55 * hopVariance);
    this.chip = chip;
    block = new SampleBlock(chip);
    rest = new RestDetector(blockNoiseG);
    noise = new Restlessness(hopVariance);
  }

  /**
   * One standard error of what averaging cannot remove: of the zero, of the calibration, of drift
   * with temperature. It is added to the random error of every later reading.
   *
   * @param rad radians, 0 or more
   * @throws IllegalArgumentException if negative or NaN
   */
  public void systematic(double rad) {
    if (!(rad >= 0)) {
      throw new IllegalArgumentException("rad is " + rad + "; it must be 0 or more");
    }
    systematicRad = rad;
  }

  /** Forgets all samples, as when the zero was changed or another sensor took over. */
  public void restart() {
    started = false;
    known = false;
    wasResting = false;
    sinceChange = FEWEST_BLOCKS;
    block.clear();
    rest.clear();
    noise.clear();
    steady.clear();
  }

  /**
   * Takes one sample. Allocates nothing.
   *
   * @param nanos monotonic time of the sample, nanoseconds; one older than the last is left out
   * @param fx specific force forward, g; NaN or infinite in any axis: the sample is left out
   * @param fy specific force to the left, g
   * @param fz specific force up, g
   */
  public void accept(long nanos, double fx, double fy, double fz) {
    if (!Double.isFinite(fx + fy + fz) || (started && nanos - lastNanos < 0)) {
      return;
    }
    if (started && nanos - lastNanos > UNKNOWN_AFTER_NANOS) {
      restart();
    }
    if (!started) {
      started = true;
      nextNanos = nanos + WIDTH_NANOS;
    }
    while (nanos - nextNanos >= 0) {
      close();
    }
    lastNanos = nanos;
    block.add(nanos, fx, fy, fz);
  }

  private void close() {
    if (block.close(nextNanos)) {
      take();
    } else {
      rest.skip();
      noise.interrupt();
    }
    nextNanos += SampleBlock.HOP_NANOS;
  }

  private void take() {
    known = true;
    double vibration = 0;
    for (int axis = 0; axis < 3; axis++) {
      live[axis] = block.mean(axis);
      vibration += block.spread(axis) * block.spread(axis);
    }
    unclear = block.isClear() ? 0 : unclear + 1;
    if (unclear > 0 && unclear <= MOST_UNCLEAR) {
      return;
    }
    rest.accept(live[0], live[1], live[2], Math.sqrt(vibration));
    boolean tame = steady.accept(block, noise);
    sinceChange = steady.isChanging(noise, CHANGING_G) ? 0 : sinceChange + 1;
    if (!rest.isResting() || isChanging()) {
      // What jacks do is not restlessness.
      noise.interrupt();
    } else if (tame) {
      noise.accept(live[0], live[1], live[2]);
    } else {
      noise.accept(steady.mean(0), steady.mean(1), steady.mean(2));
    }
    if (rest.isResting() != wasResting) {
      wasResting = rest.isResting();
      noise.clear();
      steady.restart(rest.quietBlocks());
      steady.replay(noise);
    }
  }

  /**
   * What is known now.
   *
   * @param nowNanos monotonic time of asking, nanoseconds; {@link #UNKNOWN_AFTER_NANOS} after the
   *     last good sample the state is unknown and every figure NaN
   */
  public FloorReading reading(long nowNanos) {
    if (!known || nowNanos - lastNanos > UNKNOWN_AFTER_NANOS) {
      return new FloorReading(FloorState.UNKNOWN, NONE, NONE, Double.NaN, Double.NaN, lastNanos);
    }
    double force = Math.sqrt(live[0] * live[0] + live[1] * live[1] + live[2] * live[2]);
    Lean error = rest.isResting() ? steadyError(force) : NONE;
    FloorState state = state(Math.max(error.rollRad(), error.pitchRad()));
    return new FloorReading(
            state,
            UpVector.of(live[0], live[1], live[2]).lean(),
            rest.isResting()
                ? UpVector.of(steady.mean(0), steady.mean(1), steady.mean(2)).lean()
                : NONE,
            state == FloorState.STEADY ? error : liveError(force),
            0,
            Math.max(block.spread(0), block.spread(1)) / force,
            lastNanos)
        .corrected(lean -> lean, systematicRad);
  }

  /** Magnitude of the steady force, g; NaN while there is none. 1 for a perfect sensor. */
  public double magnitudeG() {
    return rest.isResting()
        ? Math.hypot(Math.hypot(steady.mean(0), steady.mean(1)), steady.mean(2))
        : Double.NaN;
  }

  private FloorState state(double errorRad) {
    if (!rest.isResting()) {
      return rest.isMoving() ? FloorState.MOVING : FloorState.UNSETTLED;
    }
    boolean settled =
        steady.length() >= FEWEST_BLOCKS && errorRad <= TRUSTWORTHY_RAD && !isChanging();
    return settled ? FloorState.STEADY : FloorState.UNSETTLED;
  }

  private boolean isChanging() {
    return sinceChange < FEWEST_BLOCKS;
  }

  /** Of each angle; where the two differ by chance alone, their mean. */
  private Lean steadyError(double force) {
    double x = steady.variance(0, noise);
    double y = steady.variance(1, noise);
    if (Math.max(x, y) < ALIKE * Math.min(x, y)) {
      x = (x + y) / 2;
      y = x;
    }
    return new Lean(
        Math.hypot(Math.sqrt(y), chip.roundingG(block.spread(1))) / force,
        Math.hypot(Math.sqrt(x), chip.roundingG(block.spread(0))) / force);
  }

  private Lean liveError(double force) {
    double rad = Math.max(blockNoiseG, rest.swayG()) / force;
    return new Lean(rad, rad);
  }
}
