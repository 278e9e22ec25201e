package io.pitchwatch.settling;

import io.pitchwatch.settling.GroundReport.Trend;

/**
 * One angle of a parked coach: whether it is going away, since when, and how fast.
 *
 * <p>Events are taken out of the angle before anything else sees it. While the ground is taken to
 * be firm, {@link FirmGround} tests that; from the moment it gives way until the rate has died away
 * {@link GivingGround} is in charge alone.
 */
final class AxisWatch {

  static final double NANOS_PER_HOUR = 3.6e12;

  /** Noise that no mean gets rid of, radians: the sensor's own wandering. */
  private static final double FLOOR_RAD = Math.toRadians(0.002);

  /** Mean lean under wind over the spread it rocks with; a gust factor of usual turbulence. */
  private static final double WIND_PER_SPREAD = 2.5;

  /** How slowly the scale of what people do in this coach is learnt: four days. */
  private static final double SCALE_HOURS = 96;

  /** Most that it grows to, as a variance: a slow sinking must not pass for restless people. */
  private static final double LARGEST_SCALE2 = 6.25;

  /** Calm for so long at less than this rate, settling is over. */
  private static final double CALM_RAD_PER_HOUR = Math.toRadians(0.02);

  private static final double CALM_HOURS = 6;

  /** Points that the robust line is laid through. */
  private static final int MOST_POINTS = 60;

  private final GroundModel model;
  private final FirmGround firm;
  private final GivingGround giving;
  private final BlockRing blocks = new BlockRing();
  private final AxisBlock block = new AxisBlock();
  private final AxisBlock past = new AxisBlock();
  private final double[] pointHours = new double[MOST_POINTS + 1];
  private final double[] pointRad = new double[MOST_POINTS + 1];
  private double scale2 = 1;
  private boolean started;
  private boolean anew = true;
  private boolean settling;
  private long sinceNanos;
  private double calmHours;
  private double eventsRad;
  private double looseRad2;
  private double driftRadPerC;
  private double driftErrorRadPerC;
  private double driftedRad;
  private long lastNanos;

  AxisWatch(GroundModel model) {
    this.model = model;
    driftErrorRadPerC = model.coefficientRadPerC();
    firm = new FirmGround(model);
    giving = new GivingGround(model);
  }

  /**
   * Takes a block.
   *
   * @param angleRad its mean, events included
   * @param varianceRad2 of its own noise
   * @param windRad how far the coach rocked beyond the sensor's noise, one standard deviation
   * @param warmerC above the temperature at the start; 0 without a thermometer
   * @param atNanos monotonic time of its middle
   */
  void accept(double angleRad, double varianceRad2, double windRad, double warmerC, long atNanos) {
    double busy2 = scale2 * model.busyRad() * model.busyRad();
    block.angleRad = angleRad - eventsRad;
    block.varianceRad2 = varianceRad2 + FLOOR_RAD * FLOOR_RAD;
    block.busyRad = Math.sqrt(busy2 + WIND_PER_SPREAD * WIND_PER_SPREAD * windRad * windRad);
    block.warmerC = warmerC;
    block.nanos = atNanos;
    block.loosenRad = Math.sqrt(looseRad2);
    looseRad2 = 0;
    if (anew) {
      begin();
    } else {
      weigh((atNanos - lastNanos) / NANOS_PER_HOUR);
    }
    blocks.add(block);
    lastNanos = atNanos;
  }

  private void begin() {
    if (started) {
      giving.filter().restart(block.angleRad, model.rateRadPerHour());
      firm.startFrom(giving.filter(), block.angleRad);
    } else {
      firm.start(block.angleRad);
      giving.start(block.angleRad, model.rateRadPerHour());
      know(driftRadPerC, driftErrorRadPerC);
    }
    started = true;
    anew = false;
  }

  private void weigh(double hours) {
    giving.accept(block, hours);
    if (settling) {
      boolean calm = Math.abs(giving.rateRadPerHour()) < CALM_RAD_PER_HOUR;
      calmHours = calm ? calmHours + hours : 0;
      if (calmHours > CALM_HOURS) {
        endSettling();
      }
    } else {
      firm.accept(block, hours, lastNanos);
      learnScale(hours);
    }
  }

  /** Compares how busy the filter finds the floor with what the model says; never below that. */
  private void learnScale(double hours) {
    double seen2 = firm.filter().busySquare() / (model.busyRad() * model.busyRad());
    double learnt2 = scale2 + Math.min(1, hours / SCALE_HOURS) * (seen2 - scale2);
    scale2 = Math.max(1, Math.min(LARGEST_SCALE2, learnt2));
  }

  /**
   * Asks whether the ground has begun to give way, and goes over what led to it if so.
   *
   * @param upRoomRad distance to the nearest limit towards greater angles, radians
   * @param downRoomRad towards smaller ones
   */
  void judge(double upRoomRad, double downRoomRad) {
    int direction = settling ? 0 : firm.gives(upRoomRad, downRoomRad);
    if (direction != 0) {
      settling = true;
      calmHours = 0;
      sinceNanos = firm.onsetNanos(direction);
      giving.goOver(blocks, firm.atOnset(direction), sinceNanos);
    }
  }

  private void endSettling() {
    settling = false;
    firm.startFrom(giving.filter(), block.angleRad);
  }

  /** Takes in how the sensor drifts with temperature, and one standard error of that. */
  void know(double radPerC, double errorRadPerC) {
    driftRadPerC = radPerC;
    driftErrorRadPerC = errorRadPerC;
    firm.filter().coefficient(radPerC, errorRadPerC);
    giving.filter().coefficient(radPerC, errorRadPerC);
  }

  /** Takes in how much of the angle is known to be the sensor's drift, radians. */
  void drifted(double byRad) {
    driftedRad = byRad;
  }

  /** Takes in an event: a change at once, known to the given standard error. */
  void event(double byRad, double errorRad) {
    eventsRad += byRad;
    looseRad2 += errorRad * errorRad;
  }

  /** Takes in that the coach stands anew; what was learnt of the sensor stays. */
  void restart() {
    eventsRad = 0;
    looseRad2 = 0;
    settling = false;
    blocks.clear();
    anew = true;
  }

  boolean isSettling() {
    return settling;
  }

  long sinceNanos() {
    return sinceNanos;
  }

  /** The last block's angle, events included, drift not, radians; NaN before the first. */
  double angleRad() {
    return anew ? Double.NaN : block.angleRad + eventsRad - driftedRad;
  }

  /** NaN before the first block. */
  double rateRadPerHour() {
    return anew ? Double.NaN : giving.rateRadPerHour();
  }

  /** One standard error; NaN before the first block. */
  double rateErrorRadPerHour() {
    return anew ? Double.NaN : giving.rateErrorRadPerHour();
  }

  Trend trend() {
    if (anew) {
      return Trend.UNKNOWN;
    }
    return new Trend(
        giving.rateRadPerHour(),
        giving.rateErrorRadPerHour(),
        sunkRad(),
        coefficientRadPerC(),
        coefficientErrorRadPerC());
  }

  /**
   * How far the angle has gone since settling began, radians: the rise of the Theil–Sen line, which
   * does not mind who stood where. 0 when it is not settling.
   */
  private double sunkRad() {
    if (!settling) {
      return 0;
    }
    int stride = 1 + blocks.count() / MOST_POINTS;
    int count = 0;
    for (int i = (blocks.count() - 1) % stride; i < blocks.count(); i += stride) {
      blocks.get(i, past);
      if (past.nanos > sinceNanos) {
        pointHours[count] = (past.nanos - sinceNanos) / NANOS_PER_HOUR;
        pointRad[count] = past.angleRad - past.warmerC * coefficientRadPerC();
        count++;
      }
    }
    double hours = (lastNanos - sinceNanos) / NANOS_PER_HOUR;
    return count < 2 ? 0 : hours * TheilSen.of(pointHours, pointRad, count, 0.9).slope();
  }

  long lastNanos() {
    return lastNanos;
  }

  BlockRing blocks() {
    return blocks;
  }

  double coefficientRadPerC() {
    return giving.filter().coefficientRadPerC();
  }

  double coefficientErrorRadPerC() {
    return Math.sqrt(giving.filter().coefficientVariance());
  }
}
