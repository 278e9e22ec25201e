package io.pitchwatch.sensing;

/**
 * Hands samples on and listens to what they say against their sensor: values that stand still,
 * noise that no coach makes, a gravity that is not 1 g, too many at the end of the range.
 *
 * <p>Allocates nothing per sample.
 */
final class Doubts implements SampleSink {

  /** Two seconds of one and the same triple: its own noise moves any of these chips far sooner. */
  private static final double FROZEN_S = 2;

  private static final int FROZEN_FEWEST = 64;

  /** A vehicle under way shakes by 0.3 g at most in the recordings at hand; common practice. */
  private static final double WILD_G = 0.5;

  private static final double STILL_G = 0.06;
  private static final double SPIKE_G = 0.25;
  private static final double SPIKE_SIGMAS = 10;
  private static final double STEP_CLIP = 9;
  private static final double LEAST_STEP_G = 0.01;
  private static final double SPIKES_TOLERATED = 0.01;
  private static final double SATURATED_TOLERATED = 0.1;

  /** Span of temperature that the chip's drift is allowed for, °C. */
  private static final double SPAN_C = 40;

  private final SampleSink onward;
  private final Standstill standstill;
  private final int warmCount;
  private final double slow;
  private final double magnitudeTolerance;

  private final double[] now = new double[3];
  private final double[] last = new double[3];
  private final double[] beforeLast = new double[3];
  private int history;
  private long fromNanos = Long.MIN_VALUE;

  private double magnitude = 1;
  private double stepSquared;
  private double saturatedShare;
  private double spikeShare;

  private long samples;
  private long saturated;
  private long spikes;
  private long gaps;
  private long lastNanos = Long.MIN_VALUE;

  Doubts(ChipFacts facts, double rateHz, SampleSink onward) {
    this.onward = onward;
    this.standstill = new Standstill((int) Math.max(FROZEN_FEWEST, FROZEN_S * rateHz));
    this.warmCount = (int) Math.max(20, 5 * rateHz);
    this.slow = Math.min(0.1, 1 / (5 * rateHz));
    double offset = Math.max(facts.xyOffsetG(), facts.zOffsetG());
    double drift = SPAN_C * Math.max(facts.xyTempcoG(), facts.zTempcoG());
    this.magnitudeTolerance = offset + drift + facts.scaleTolerance();
  }

  /**
   * The samples to come do not follow on from those before.
   *
   * @param settledNanos samples taken before this do not count
   */
  void restart(long settledNanos) {
    history = 0;
    standstill.restart();
    fromNanos = settledNanos;
  }

  @Override
  public void sample(long nanos, double xG, double yG, double zG) {
    if (nanos < fromNanos) {
      return;
    }
    now[0] = xG;
    now[1] = yG;
    now[2] = zG;
    double sizeG = Math.sqrt(xG * xG + yG * yG + zG * zG);
    if (!standstill.lives(xG, yG, zG, Math.abs(sizeG - 1) <= magnitudeTolerance)) {
      return;
    }
    magnitude += slow * (sizeG - magnitude);
    saturatedShare -= slow * saturatedShare;
    noteStep();
    noteSpike();
    for (int axis = 0; axis < 3; axis++) {
      beforeLast[axis] = last[axis];
      last[axis] = now[axis];
    }
    history++;
    samples++;
    lastNanos = nanos;
    onward.sample(nanos, xG, yG, zG);
  }

  /** A single wild step counts for little, so that spikes do not hide among themselves. */
  private void noteStep() {
    if (history > 0) {
      double most = STEP_CLIP * stepSquared + LEAST_STEP_G * LEAST_STEP_G;
      double squared = Math.min(distanceSquared(now, last), most);
      stepSquared += slow * (squared - stepSquared);
    }
  }

  /** The last sample was a spike if it stood far from both neighbours, and they close together. */
  private void noteSpike() {
    spikeShare -= slow * spikeShare;
    if (history < 2) {
      return;
    }
    double out = Math.min(distanceSquared(last, beforeLast), distanceSquared(now, last));
    double across = distanceSquared(now, beforeLast);
    double noise = SPIKE_SIGMAS * noiseG();
    if (out > Math.max(SPIKE_G * SPIKE_G, noise * noise) && across < out / 16) {
      spikes++;
      spikeShare += slow;
    }
  }

  private static double distanceSquared(double[] a, double[] b) {
    double x = a[0] - b[0];
    double y = a[1] - b[1];
    double z = a[2] - b[2];
    return x * x + y * y + z * z;
  }

  @Override
  public void saturated(long nanos) {
    if (nanos < fromNanos) {
      return;
    }
    saturated++;
    saturatedShare += slow * (1 - saturatedShare);
    onward.saturated(nanos);
  }

  @Override
  public void gap(long nanos) {
    gaps++;
    history = 0;
    onward.gap(nanos);
  }

  /** Whether the sensor repeats one value; such samples are not handed on. */
  boolean frozen() {
    return standstill.frozen();
  }

  /** Spread of samples about their neighbours, g, one standard deviation of an axis. */
  private double noiseG() {
    return Math.sqrt(stepSquared / 6);
  }

  /** Whether the coach stands still enough for a self-test. */
  boolean still() {
    return samples > warmCount && noiseG() < STILL_G;
  }

  /** What stands against the sensor, for people; empty if nothing does. */
  String doubt() {
    if (standstill.quietFromTheStart()) {
      return "it has said one value ever since the start, without the noise that a chip has";
    }
    if (standstill.deadAxis() != ' ') {
      return "its " + standstill.deadAxis() + " axis repeats one value";
    }
    if (saturatedShare > SATURATED_TOLERATED) {
      return "more than a tenth of its samples are at the end of its range";
    }
    if (samples < warmCount) {
      return "";
    }
    if (noiseG() > WILD_G) {
      return "it is noisier than any coach can be";
    }
    if (Math.abs(magnitude - 1) > magnitudeTolerance) {
      return "what it measures at rest is too far from 1 g";
    }
    return spikeShare > SPIKES_TOLERATED ? "more than one in a hundred samples is a spike" : "";
  }

  long samples() {
    return samples;
  }

  long saturatedSamples() {
    return saturated;
  }

  long spikes() {
    return spikes;
  }

  long gaps() {
    return gaps;
  }

  /** Time of the last sample handed on; the least long before the first. */
  long lastNanos() {
    return lastNanos;
  }

  /** Whether nearly all that comes is at the end of the range. */
  boolean pinned() {
    return saturatedShare > 0.9;
  }
}
