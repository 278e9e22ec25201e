package io.pitchwatch.settling;

/**
 * The test whether the ground is still firm under one angle.
 *
 * <p>A filter without a rate foretells each block. What it gets wrong, in its own standard
 * deviations, is normal and independent as long as the model holds; a cumulative sum to each side
 * adds that up. The run length between false signals is designed, see {@link #RUN_LENGTH}.
 */
final class FirmGround {

  /** What a deviation must exceed to count: tuned to a shift of one standard deviation. */
  static final double ALLOWANCE = 0.5;

  /** A deviation counts for no more than this, so that no single block raises an alarm. */
  static final double CLIP = 3;

  /**
   * Blocks between false signals of one side. The two sides of two angles together are to give at
   * most one in 90 days; ten times that by design, since people and sun keep to no model.
   */
  static final double RUN_LENGTH = 10 * 4 * 90 * 24 / Block.LENGTH_HOURS;

  static final double THRESHOLD = RunLength.thresholdFor(ALLOWANCE, CLIP, RUN_LENGTH);

  /** Least change that is called settling, radians: more than people do to most coaches. */
  private static final double LEAST_RAD = Math.toRadians(0.3);

  /** Nearer than this to a limit, less evidence is enough, down to the least share of it. */
  private static final double NEAR_RAD = Math.toRadians(1.5);

  private static final double LEAST_SHARE = 0.5;

  private final LeanFilter filter;
  private final Side up;
  private final Side down;
  private double angleRad;

  /** One direction: its sum, and what was known when that sum last left zero. */
  private static final class Side {
    private final double sign;
    private final Cusum sum = new Cusum(ALLOWANCE, THRESHOLD);
    private final LeanFilter atOnset;
    private double angleAtOnsetRad;

    Side(double sign, GroundModel model) {
      this.sign = sign;
      this.atOnset = new LeanFilter(model);
    }
  }

  FirmGround(GroundModel model) {
    filter = new LeanFilter(model);
    up = new Side(1, model);
    down = new Side(-1, model);
  }

  void start(double firstRad) {
    filter.start(firstRad, 0);
    begin(firstRad);
  }

  /** Goes on from what a filter knows, taking its rate for none. */
  void startFrom(LeanFilter known, double nowRad) {
    filter.copyFrom(known);
    filter.freeRate(0);
    begin(nowRad);
  }

  private void begin(double nowRad) {
    angleRad = nowRad;
    up.sum.reset();
    down.sum.reset();
  }

  /**
   * Weighs a block.
   *
   * @param hours since the block before
   * @param lastNanos time of the block before
   */
  void accept(AxisBlock block, double hours, long lastNanos) {
    keepOnset(up);
    keepOnset(down);
    filter.loosen(block.loosenRad);
    filter.predict(hours, block.busyRad);
    filter.observe(block);
    double deviation = filter.standardised();
    filter.update(CLIP);
    double clipped = Math.max(-CLIP, Math.min(CLIP, deviation));
    up.sum.add(clipped, lastNanos);
    down.sum.add(-clipped, lastNanos);
    angleRad = block.angleRad - block.warmerC * filter.coefficientRadPerC();
  }

  private void keepOnset(Side side) {
    if (side.sum.sum() == 0) {
      side.atOnset.copyFrom(filter);
      side.angleAtOnsetRad = angleRad;
    }
  }

  /**
   * Whether the ground gives way towards greater angles (1), towards smaller ones (−1), or not (0).
   *
   * @param upRoomRad distance to the nearest limit towards greater angles, radians
   * @param downRoomRad towards smaller ones
   */
  int gives(double upRoomRad, double downRoomRad) {
    if (gives(up, upRoomRad)) {
      return 1;
    }
    return gives(down, downRoomRad) ? -1 : 0;
  }

  private boolean gives(Side side, double roomRad) {
    double share = Math.max(LEAST_SHARE, Math.min(1, roomRad / NEAR_RAD));
    double gone = side.sign * (angleRad - side.angleAtOnsetRad);
    return side.sum.sum() > share * THRESHOLD && gone > share * LEAST_RAD;
  }

  /** When the sum of a side last left zero. */
  long onsetNanos(int direction) {
    return (direction > 0 ? up : down).sum.sinceNanos();
  }

  /** What was known when the sum of a side last left zero. */
  LeanFilter atOnset(int direction) {
    return (direction > 0 ? up : down).atOnset;
  }

  LeanFilter filter() {
    return filter;
  }
}
