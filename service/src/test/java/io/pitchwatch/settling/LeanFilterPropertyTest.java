package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The filter on angles drawn from its own model: what it gets wrong is white and of unit size. */
class LeanFilterPropertyTest {

  private static final GroundModel MODEL = GroundModel.withThermometer(Math.toRadians(0.023));
  private static final int DAYS = 40;

  /** Draws a coach on firm ground, one block after another. */
  private static final class Firm {
    private final SplittableRandom random;
    private final AxisBlock block = new AxisBlock();
    private final double coefficient;
    private double level;
    private double busy;
    private double warm;
    private double cosine;
    private double sine;

    Firm(SplittableRandom random) {
      this.random = random;
      coefficient = MODEL.coefficientRadPerC() * random.nextGaussian();
      busy = MODEL.busyRad() * random.nextGaussian();
      warm = MODEL.warmRad() * random.nextGaussian();
      cosine = MODEL.dailyRad() * random.nextGaussian();
      sine = MODEL.dailyRad() * random.nextGaussian();
      block.varianceRad2 = Math.pow(Math.toRadians(0.004), 2);
      block.busyRad = MODEL.busyRad();
    }

    AxisBlock next() {
      double hours = Block.LENGTH_HOURS;
      block.nanos += Block.LENGTH_NANOS;
      level += MODEL.levelRadPerRootHour() * Math.sqrt(hours) * random.nextGaussian();
      busy = keep(busy, hours / MODEL.busyHours(), MODEL.busyRad());
      warm = keep(warm, hours / MODEL.warmHours(), MODEL.warmRad());
      cosine = keep(cosine, hours / MODEL.dailyHours(), MODEL.dailyRad());
      sine = keep(sine, hours / MODEL.dailyHours(), MODEL.dailyRad());
      double day = 2 * Math.PI * block.nanos / AxisWatch.NANOS_PER_HOUR / 24;
      block.warmerC = 8 * Math.sin(day + 1);
      double drift = coefficient * block.warmerC;
      double daily = cosine * Math.cos(day) + sine * Math.sin(day);
      double noise = Math.sqrt(block.varianceRad2) * random.nextGaussian();
      block.angleRad = level + busy + warm + drift + daily + noise;
      return block;
    }

    private double keep(double state, double share, double stationary) {
      double keep = Math.exp(-share);
      return keep * state + stationary * Math.sqrt(1 - keep * keep) * random.nextGaussian();
    }
  }

  @Test
  void deviationsAreWhiteAndOfUnitSize() {
    long seed = 5;
    Firm coach = new Firm(new SplittableRandom(seed));
    LeanFilter filter = new LeanFilter(MODEL);
    filter.start(coach.next().angleRad, 0);
    double sum = 0;
    double squares = 0;
    double products = 0;
    double last = 0;
    int count = DAYS * 144;
    for (int i = 0; i < count; i++) {
      AxisBlock block = coach.next();
      filter.predict(Block.LENGTH_HOURS, block.busyRad);
      filter.observe(block);
      double off = filter.standardised();
      filter.update(Double.POSITIVE_INFINITY);
      sum += off;
      squares += off * off;
      products += off * last;
      last = off;
    }
    double within = 4 / Math.sqrt(count);
    assertEquals(0, sum / count, within, "seed " + seed);
    assertEquals(1, squares / count, Math.sqrt(2) * within + 0.02, "seed " + seed);
    assertEquals(0, products / count, within, "seed " + seed);
  }

  /** The run length designed for independent values holds for what the filter gets wrong. */
  @Test
  void falseSignalsComeAsRarelyAsDesigned() {
    long seed = 6;
    SplittableRandom random = new SplittableRandom(seed);
    double threshold = RunLength.thresholdFor(FirmGround.ALLOWANCE, FirmGround.CLIP, 500);
    int signals = 0;
    int blocks = 0;
    for (int coachNumber = 0; coachNumber < 40; coachNumber++) {
      Firm coach = new Firm(random);
      LeanFilter filter = new LeanFilter(MODEL);
      filter.start(coach.next().angleRad, 0);
      Cusum sum = new Cusum(FirmGround.ALLOWANCE, threshold);
      for (int i = 0; i < DAYS * 144; i++, blocks++) {
        AxisBlock block = coach.next();
        filter.predict(Block.LENGTH_HOURS, block.busyRad);
        filter.observe(block);
        double off = filter.standardised();
        filter.update(FirmGround.CLIP);
        sum.add(Math.max(-FirmGround.CLIP, Math.min(FirmGround.CLIP, off)), 0);
        if (sum.signals()) {
          signals++;
          sum.reset();
        }
      }
    }
    double runLength = blocks / (double) signals;
    assertEquals(500, runLength, 4 * 500 / Math.sqrt(signals), "seed " + seed);
  }
}
