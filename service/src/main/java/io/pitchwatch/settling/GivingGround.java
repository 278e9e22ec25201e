package io.pitchwatch.settling;

/**
 * How fast one angle changes: a filter with a rate, whose standard error follows what it gets
 * wrong.
 *
 * <p>It runs all the time. When settling is found it goes over the blocks since the onset again,
 * with a rate that may be anything, since a rate that begins at once is not what it expects.
 */
final class GivingGround {

  /** A rate may be anything within this, one standard deviation, when settling is found. */
  private static final double FREE_RAD_PER_HOUR = Math.toRadians(0.3);

  private static final double CLIP = 4;

  /** Blocks that the scale of deviations is averaged over: one day. */
  private static final double SCALE_BLOCKS = 24 / Block.LENGTH_HOURS;

  /** Blocks that the model's own scale counts for at the start. */
  private static final double FIRST_BLOCKS = 12;

  private final LeanFilter filter;
  private final AxisBlock past = new AxisBlock();
  private double scale2 = 1;
  private double scaleBlocks = FIRST_BLOCKS;

  GivingGround(GroundModel model) {
    filter = new LeanFilter(model);
  }

  void start(double firstRad, double rateRadPerHour) {
    filter.start(firstRad, rateRadPerHour);
  }

  void accept(AxisBlock block, double hours) {
    step(block, hours);
    double off = Math.min(CLIP, Math.abs(filter.standardised()));
    scaleBlocks = Math.min(scaleBlocks + 1, SCALE_BLOCKS);
    scale2 += (off * off - scale2) / scaleBlocks;
  }

  private void step(AxisBlock block, double hours) {
    filter.loosen(block.loosenRad);
    filter.predict(hours, block.busyRad);
    filter.observe(block);
    filter.update(CLIP);
  }

  /** Goes over the blocks after an instant again, from what was known then. */
  void goOver(BlockRing blocks, LeanFilter known, long fromNanos) {
    filter.copyFrom(known);
    filter.freeRate(FREE_RAD_PER_HOUR);
    long last = fromNanos;
    for (int i = 0; i < blocks.count(); i++) {
      blocks.get(i, past);
      if (past.nanos > fromNanos) {
        step(past, (past.nanos - last) / AxisWatch.NANOS_PER_HOUR);
        last = past.nanos;
      }
    }
  }

  LeanFilter filter() {
    return filter;
  }

  double rateRadPerHour() {
    return filter.rateRadPerHour();
  }

  /** One standard error of the rate. */
  double rateErrorRadPerHour() {
    return Math.sqrt(filter.rateVariance() * scale2);
  }
}
