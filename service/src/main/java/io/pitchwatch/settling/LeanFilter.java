package io.pitchwatch.settling;

import java.util.Arrays;

/**
 * A Kalman filter of one angle of the floor, in radians and hours.
 *
 * <p>The angle that is seen is a sum: level (a slow random walk, and where the model has one a rate
 * that moves it) + what people and wind do (first-order autoregression) + what warmth does beyond
 * the thermometer (the same, slower) + temperature × coefficient + a daily wave (cosine and sine of
 * 24 h, phase unknown) + noise. All of it is in docs/physics.md, section 6.
 */
final class LeanFilter {

  private static final int LEVEL = 0;
  private static final int BUSY = 1;
  private static final int WARM = 2;
  private static final int COEFFICIENT = 3;
  private static final int COSINE = 4;
  private static final int SINE = 5;
  private static final int RATE = 6;
  private static final int STATES = 7;
  private static final double DAY_HOURS = 24;

  private final GroundModel model;
  private final double[] x = new double[STATES];
  private final double[][] p = new double[STATES][STATES];
  private final double[] h = new double[STATES];
  private final double[] gain = new double[STATES];
  private double innovation;
  private double innovationVariance;

  LeanFilter(GroundModel model) {
    this.model = model;
    h[LEVEL] = 1;
    h[BUSY] = 1;
    h[WARM] = 1;
  }

  /**
   * Begins with a first angle, of which nothing was known before.
   *
   * @param rateRadPerHour how large a rate may be, one standard deviation; 0 for a filter that
   *     knows of none
   */
  void start(double angleRad, double rateRadPerHour) {
    Arrays.fill(x, 0);
    for (double[] row : p) {
      Arrays.fill(row, 0);
    }
    x[LEVEL] = angleRad;
    p[LEVEL][LEVEL] = square(model.startRad());
    p[BUSY][BUSY] = square(model.busyRad());
    p[WARM][WARM] = square(model.warmRad());
    p[COEFFICIENT][COEFFICIENT] = square(model.coefficientRadPerC());
    p[COSINE][COSINE] = square(model.dailyRad());
    p[SINE][SINE] = square(model.dailyRad());
    p[RATE][RATE] = square(rateRadPerHour);
  }

  /**
   * Lets time pass.
   *
   * @param hours how much
   * @param busyRad how far people and wind take the floor at present, one standard deviation
   */
  void predict(double hours, double busyRad) {
    decay(BUSY, hours / model.busyHours(), busyRad);
    decay(WARM, hours / model.warmHours(), model.warmRad());
    p[LEVEL][LEVEL] += square(model.levelRadPerRootHour()) * hours;
    decay(COSINE, hours / model.dailyHours(), model.dailyRad());
    decay(SINE, hours / model.dailyHours(), model.dailyRad());
    decay(COEFFICIENT, hours / model.coefficientHours(), model.coefficientRadPerC());
    if (p[RATE][RATE] > 0) {
      x[LEVEL] += hours * x[RATE];
      for (int i = 0; i < STATES; i++) {
        p[LEVEL][i] += hours * p[RATE][i];
      }
      for (int i = 0; i < STATES; i++) {
        p[i][LEVEL] += hours * p[i][RATE];
      }
      decay(RATE, hours / model.rateHours(), model.rateRadPerHour());
    }
  }

  private void decay(int state, double share, double stationaryRad) {
    double keep = Math.exp(-share);
    x[state] *= keep;
    for (int i = 0; i < STATES; i++) {
      p[state][i] *= keep;
      p[i][state] *= keep;
    }
    p[state][state] += square(stationaryRad) * (1 - keep * keep);
  }

  /**
   * Compares what is seen with what was foreseen; {@link #update} then takes it in.
   *
   * @param block angle, its variance, temperature and time, which drives the daily wave
   */
  void observe(AxisBlock block) {
    double phase = 2 * Math.PI * block.nanos / AxisWatch.NANOS_PER_HOUR / DAY_HOURS;
    h[COEFFICIENT] = block.warmerC;
    h[COSINE] = Math.cos(phase);
    h[SINE] = Math.sin(phase);
    innovation = block.angleRad;
    innovationVariance = block.varianceRad2;
    for (int i = 0; i < STATES; i++) {
      double sum = 0;
      for (int j = 0; j < STATES; j++) {
        sum += p[i][j] * h[j];
      }
      gain[i] = sum;
      innovation -= h[i] * x[i];
      innovationVariance += h[i] * sum;
    }
  }

  /** The last innovation in its own standard deviations: N(0, 1) while the model holds. */
  double standardised() {
    return innovation / Math.sqrt(innovationVariance);
  }

  /**
   * Takes the last observation in, one that is further off than the clip with no more weight than
   * one at the clip (Huber).
   */
  void update(double clip) {
    double off = Math.abs(standardised());
    double weight = off > clip ? clip / off : 1;
    for (int i = 0; i < STATES; i++) {
      double k = gain[i] / innovationVariance;
      x[i] += k * weight * innovation;
      for (int j = 0; j < STATES; j++) {
        p[i][j] -= k * weight * gain[j];
      }
    }
  }

  /** Takes in that the level is known less well, by so much, one standard deviation. */
  void loosen(double byRad) {
    p[LEVEL][LEVEL] += square(byRad);
  }

  /** Takes in that nothing is known of the rate any more, or, at 0, that there is none. */
  void freeRate(double withinRadPerHour) {
    x[RATE] = 0;
    for (int i = 0; i < STATES; i++) {
      p[RATE][i] = 0;
      p[i][RATE] = 0;
    }
    p[RATE][RATE] = square(withinRadPerHour);
  }

  /** Takes in that the coach stands anew: level and rate are unknown, the sensor's ways are not. */
  void restart(double angleRad, double rateRadPerHour) {
    forget(LEVEL, model.startRad());
    forget(BUSY, model.busyRad());
    forget(WARM, model.warmRad());
    freeRate(rateRadPerHour);
    x[LEVEL] = angleRad - h[COEFFICIENT] * x[COEFFICIENT];
  }

  /**
   * Takes in how the sensor drifts with temperature, as it is known from elsewhere. What is
   * foreseen at the present temperature stays the same.
   *
   * @param radPerC the coefficient
   * @param errorRadPerC one standard error of it
   */
  void coefficient(double radPerC, double errorRadPerC) {
    x[LEVEL] += (x[COEFFICIENT] - radPerC) * h[COEFFICIENT];
    forget(COEFFICIENT, errorRadPerC);
    x[COEFFICIENT] = radPerC;
  }

  private void forget(int state, double withinRad) {
    x[state] = 0;
    for (int i = 0; i < STATES; i++) {
      p[state][i] = 0;
      p[i][state] = 0;
    }
    p[state][state] = square(withinRad);
  }

  /** Takes over everything another filter of the same model knows. */
  void copyFrom(LeanFilter other) {
    System.arraycopy(other.x, 0, x, 0, STATES);
    for (int i = 0; i < STATES; i++) {
      System.arraycopy(other.p[i], 0, p[i], 0, STATES);
    }
  }

  /** Expected square of what people and wind do at present, rad². */
  double busySquare() {
    return square(x[BUSY]) + p[BUSY][BUSY];
  }

  double rateRadPerHour() {
    return x[RATE];
  }

  double rateVariance() {
    return p[RATE][RATE];
  }

  double coefficientRadPerC() {
    return x[COEFFICIENT];
  }

  double coefficientVariance() {
    return p[COEFFICIENT][COEFFICIENT];
  }

  private static double square(double value) {
    return value * value;
  }
}
