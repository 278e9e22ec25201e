package io.pitchwatch.settling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import java.util.Arrays;

/**
 * Makes minutes of the floor's readings.
 *
 * <p>A minute's angle is the mean of the middle half of its live angles, taken while the coach was
 * at rest: a quarter of wild ones on either side do not move it. The spread is that of the middle
 * half, as of a normal distribution. Allocates nothing but the minutes.
 */
public final class MinuteAverage {

  private static final long SECOND_NANOS = 1_000_000_000L;
  private static final long MINUTE_NANOS = 60 * SECOND_NANOS;

  /** A reading stands for no more time than this, however long the next one took. */
  private static final long LONGEST_NANOS = SECOND_NANOS;

  /** So much motion in a minute is a move, not a stumble. */
  private static final long MOVED_NANOS = 2 * SECOND_NANOS;

  /** Twenty readings a second; more of them in a minute are left out. */
  private static final int MOST_READINGS = 1200;

  /** Quartiles of the normal distribution lie so many standard deviations apart. */
  private static final double QUARTILES_APART = 1.349;

  /** The mean of the middle half has so much more standard error than the plain mean. */
  private static final double MIDDLE_HALF_ERROR = 1.09;

  private final double[] rollRad = new double[MOST_READINGS];
  private final double[] pitchRad = new double[MOST_READINGS];
  private int count;
  private long restNanos;
  private long movingNanos;
  private double sumTemperatureC;
  private int temperatures;
  private boolean begun;
  private long beginNanos;
  private long lastNanos;
  private MinuteValue minute =
      new MinuteValue(0, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 0, false);

  /**
   * Takes a reading.
   *
   * @param reading the floor now
   * @param temperatureC the sensor's temperature; NaN without a thermometer
   * @param nowNanos monotonic time, never before that of the reading before
   * @return whether a minute is complete; {@link #minute()} is then that minute
   */
  public boolean accept(FloorReading reading, double temperatureC, long nowNanos) {
    if (!begun) {
      begun = true;
      beginNanos = nowNanos;
      lastNanos = nowNanos;
    }
    boolean complete = nowNanos - beginNanos >= MINUTE_NANOS;
    if (complete) {
      close();
      beginNanos += (nowNanos - beginNanos) / MINUTE_NANOS * MINUTE_NANOS;
    }
    add(reading, temperatureC, Math.min(LONGEST_NANOS, nowNanos - lastNanos));
    lastNanos = nowNanos;
    return complete;
  }

  /** The last minute that was complete; before the first, one that knows nothing. */
  public MinuteValue minute() {
    return minute;
  }

  private void add(FloorReading reading, double temperatureC, long lastedNanos) {
    if (reading.state() == FloorState.MOVING) {
      movingNanos += lastedNanos;
      return;
    }
    Lean lean = reading.live();
    if (reading.state() == FloorState.UNKNOWN || !lean.isKnown()) {
      return;
    }
    restNanos += lastedNanos;
    if (count < MOST_READINGS) {
      rollRad[count] = lean.rollRad();
      pitchRad[count] = lean.pitchRad();
      count++;
    }
    if (!Double.isNaN(temperatureC)) {
      sumTemperatureC += temperatureC;
      temperatures++;
    }
  }

  private void close() {
    Arrays.sort(rollRad, 0, count);
    Arrays.sort(pitchRad, 0, count);
    double spread = Math.max(spread(rollRad), spread(pitchRad));
    // The live figure settles within a second, so about one a second is independent.
    double independent = Math.max(1, restNanos / (double) SECOND_NANOS);
    minute =
        new MinuteValue(
            beginNanos + MINUTE_NANOS,
            middleHalf(rollRad),
            middleHalf(pitchRad),
            MIDDLE_HALF_ERROR * spread / Math.sqrt(independent),
            spread,
            temperatures == 0 ? Double.NaN : sumTemperatureC / temperatures,
            Math.min(1, restNanos / (double) MINUTE_NANOS),
            movingNanos >= MOVED_NANOS);
    count = 0;
    restNanos = 0;
    movingNanos = 0;
    sumTemperatureC = 0;
    temperatures = 0;
  }

  private double middleHalf(double[] sorted) {
    int skip = count / 4;
    double sum = 0;
    for (int i = skip; i < count - skip; i++) {
      sum += sorted[i];
    }
    return sum / (count - 2 * skip);
  }

  private double spread(double[] sorted) {
    return count == 0
        ? Double.NaN
        : (sorted[count - 1 - count / 4] - sorted[count / 4]) / QUARTILES_APART;
  }
}
