package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;

/**
 * Live and steady lean from one stream of samples. First, plain form: one second of samples for the
 * live figure and for the state, a running mean since rest for the steady one.
 */
public final class FloorFilter {

  private static final long UNKNOWN_AFTER_NANOS = 4_000_000_000L;
  private static final Lean NONE = new Lean(Double.NaN, Double.NaN);

  private final SensorNoise noise;
  private final double[] sum = new double[3];
  private final double[] mean = new double[3];
  private final double[] rest = new double[3];
  private double sumSquares;
  private int count;
  private long blockStartNanos;
  private long lastNanos;
  private int restBlocks;
  private boolean any;
  private double spreadG = Double.NaN;
  private double systematicRad;

  /**
   * A filter that knows nothing yet.
   *
   * @param noise the chip's own noise
   */
  public FloorFilter(SensorNoise noise) {
    this.noise = noise;
  }

  /**
   * One standard error of what averaging cannot remove: of the zero, of the calibration, of drift
   * with temperature.
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
    any = false;
    restBlocks = 0;
    spreadG = Double.NaN;
    count = 0;
  }

  /**
   * Takes one sample. Allocates nothing.
   *
   * @param nanos monotonic time of the sample; one that goes back is left out
   * @param fx specific force forward, g; NaN or infinite: the sample is left out
   * @param fy specific force to the left, g
   * @param fz specific force up, g
   */
  public void accept(long nanos, double fx, double fy, double fz) {
    if (!Double.isFinite(fx + fy + fz) || (any && nanos - lastNanos < 0)) {
      return;
    }
    if (!any) {
      any = true;
      clear(nanos);
    }
    lastNanos = nanos;
    sum[0] += fx;
    sum[1] += fy;
    sum[2] += fz;
    sumSquares += fx * fx + fy * fy + fz * fz;
    count++;
    if (nanos - blockStartNanos >= 500_000_000L && count >= 8) {
      close(nanos);
    }
  }

  private void close(long nanos) {
    double change = 0;
    double squares = 0;
    for (int i = 0; i < 3; i++) {
      double m = sum[i] / count;
      change += (m - mean[i]) * (m - mean[i]);
      squares += m * m;
      mean[i] = m;
    }
    double spread = Math.sqrt(Math.max(0, sumSquares / count - squares) / 3);
    boolean first = Double.isNaN(spreadG);
    spreadG = spread;
    double allowed = Math.max(0.004, 8 * noise.sampleG() / Math.sqrt(count));
    restBlocks = !first && Math.sqrt(change) < allowed ? restBlocks + 1 : 0;
    for (int i = 0; i < 3; i++) {
      rest[i] =
          restBlocks <= 1 ? mean[i] : rest[i] + (mean[i] - rest[i]) / Math.min(restBlocks, 120);
    }
    clear(nanos);
  }

  private void clear(long nanos) {
    sum[0] = 0;
    sum[1] = 0;
    sum[2] = 0;
    sumSquares = 0;
    count = 0;
    blockStartNanos = nanos;
  }

  /**
   * What is known now.
   *
   * @param nowNanos monotonic time of asking; the state is unknown 4 s after the last good sample
   */
  public FloorReading reading(long nowNanos) {
    if (Double.isNaN(spreadG) || nowNanos - lastNanos > UNKNOWN_AFTER_NANOS) {
      return new FloorReading(FloorState.UNKNOWN, NONE, NONE, Double.NaN, Double.NaN, lastNanos);
    }
    Lean live = UpVector.of(mean[0], mean[1], mean[2]).lean();
    FloorState state =
        restBlocks >= 6
            ? FloorState.STEADY
            : restBlocks >= 2 ? FloorState.UNSETTLED : FloorState.MOVING;
    Lean steady = state == FloorState.STEADY ? UpVector.of(rest[0], rest[1], rest[2]).lean() : NONE;
    double seconds = state == FloorState.STEADY ? Math.min(restBlocks, 120) * 0.5 : 0.5;
    double random =
        Math.max(noise.boundRad(seconds), spreadG / Math.sqrt(seconds * noise.rateHz()));
    return new FloorReading(
        state, live, steady, Math.hypot(random, systematicRad), spreadG, lastNanos);
  }
}
