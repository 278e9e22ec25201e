package io.pitchwatch.sensing;

import java.util.Locale;

/**
 * Averages a chip's output without and with its test force, and judges the change.
 *
 * <p>The judgement supposes that the chip stands still meanwhile (ADXL345 data sheet, "Using
 * Self-Test"); when it does not, there is none.
 */
final class SelfTest implements SampleSink {

  /** What came of it. */
  enum Verdict {
    PASSED,
    FAILED,
    /** The coach moved, or too few samples came. */
    INCONCLUSIVE
  }

  private static final int FEWEST = 8;

  /** Spread above which the coach is taken to move: more than twice that of an idling bus. */
  private static final double STILL_G = 0.06;

  private static final String[] AXES = {"x", "y", "z"};

  private final double[] sum = new double[3];
  private final double[] squares = new double[3];
  private final double[] unforced = new double[3];
  private final double[] forced = new double[3];
  private int count;
  private long fromNanos;
  private boolean still;
  private String fault = "";

  /** Starts over; samples taken before the given time do not count. */
  void begin(long settledNanos) {
    still = true;
    average(settledNanos);
  }

  private void average(long settledNanos) {
    fromNanos = settledNanos;
    count = 0;
    for (int axis = 0; axis < 3; axis++) {
      sum[axis] = 0;
      squares[axis] = 0;
    }
  }

  /** Ends the part without force and starts that with force. */
  void force(long settledNanos) {
    keep(unforced);
    average(settledNanos);
  }

  private void keep(double[] mean) {
    still &= count >= FEWEST;
    for (int axis = 0; axis < 3; axis++) {
      mean[axis] = sum[axis] / count;
      double variance = squares[axis] / count - mean[axis] * mean[axis];
      still &= variance < STILL_G * STILL_G;
    }
  }

  @Override
  public void sample(long nanos, double xG, double yG, double zG) {
    if (nanos < fromNanos) {
      return;
    }
    count++;
    add(0, xG);
    add(1, yG);
    add(2, zG);
  }

  private void add(int axis, double g) {
    sum[axis] += g;
    squares[axis] += g * g;
  }

  /** Ends the part with force and judges. */
  Verdict judge(SelfTestLimits limits) {
    keep(forced);
    if (!still) {
      return Verdict.INCONCLUSIVE;
    }
    fault = "";
    judge(0, limits.xMinG(), limits.xMaxG());
    judge(1, limits.yMinG(), limits.yMaxG());
    judge(2, limits.zMinG(), limits.zMaxG());
    return fault.isEmpty() ? Verdict.PASSED : Verdict.FAILED;
  }

  private void judge(int axis, double least, double most) {
    double change = forced[axis] - unforced[axis];
    if (fault.isEmpty() && !(change >= least && change <= most)) {
      fault =
          String.format(
              Locale.ROOT,
              "its self-test moved %s by %.2f g; %.2f to %.2f g is right",
              AXES[axis],
              change,
              least,
              most);
    }
  }

  /** What was wrong, for people; empty unless the last verdict was failed. */
  String fault() {
    return fault;
  }
}
