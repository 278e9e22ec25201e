package io.pitchwatch.floor;

import java.util.Arrays;

/**
 * Tells a coach at rest from one under way, block by block (every 0.2 s).
 *
 * <p>An idling engine shakes as hard as a road, but only above 5 Hz, where the blocks are deaf;
 * what is left below 2 Hz is the yardstick. Three things mark a coach under way: the horizontal
 * force wanders, since speed and heading change; the body heaves on its springs; and a coach that
 * pulls away leaves its lean at once. People, wind, jacks and slide-outs do at most two of these,
 * or do them slowly. Figures are of coaches, docs/physics.md section 2 says how they were found;
 * none is taken below four times the chip's own noise.
 */
final class RestDetector {

  private static final int SEEN = 7;
  private static final int KEPT = 12;
  private static final double MILLI = 1e-3;

  /** Horizontal and vertical spread of blocks that a quiet coach stays under, g. */
  private static final double QUIET_G = 3.5 * MILLI;

  private static final double QUIET_HEAVE_G = 5 * MILLI;

  /** Wind rocks a parked coach this much, but does not heave it. */
  private static final double ROCKING_G = 10 * MILLI;

  private static final double NO_HEAVE_G = 2.5 * MILLI;

  /** Springs still swinging after the stop, or people getting off. */
  private static final double SWAYING_G = 5 * MILLI;

  private static final double SWINGING_G = 8 * MILLI;

  private static final double ROAD_G = 5 * MILLI;
  private static final double ROAD_HEAVE_G = 3 * MILLI;
  private static final double ROUGH_G = 12 * MILLI;

  /** Leaving one's lean by 0.7 deg within 1.4 s: no jack does that. */
  private static final double DEPARTURE_G = 12 * MILLI;

  /** The jolt that ends a braking. */
  private static final double JOLT_G = 50 * MILLI;

  private static final double JOLT_COUNTS_FOR_S = 5;
  private static final double WITHOUT_JOLT_RATE = 0.3;
  private static final double BELIEVED_AFTER_S = 0.6;
  private static final double ROAD_FOR_S = 3;
  private static final double MORE_VIBRATION = 2.5;

  /** Another lean than at the last rest, by 3.4 deg. */
  private static final double OTHER_LEAN_G = 60 * MILLI;

  private static final double OTHER_LEAN_RATE = 0.15;

  private final double noiseG;
  private final double[][] recent = new double[3][KEPT];
  private final double[] sorted = new double[KEPT];
  private int filled;
  private double quietS;
  private int quietBlocks;
  private double roadS;
  private boolean resting;
  private boolean moving;
  private double swayG = Double.NaN;
  private double sinceJoltS = JOLT_COUNTS_FOR_S;
  private double restX;
  private double restY;
  private double vibrationAtRestG;

  /**
   * @param noiseG standard deviation of a block due to the chip alone, g
   */
  RestDetector(double noiseG) {
    this.noiseG = noiseG;
  }

  void clear() {
    skip();
    roadS = 0;
    resting = false;
    moving = false;
    swayG = Double.NaN;
    vibrationAtRestG = 0;
  }

  /** Forgets the last blocks, not the state: after a gap in the samples. */
  void skip() {
    filled = 0;
    quietS = 0;
    quietBlocks = 0;
  }

  boolean isResting() {
    return resting;
  }

  /** Whether the coach is known to be under way; right after the start neither is known. */
  boolean isMoving() {
    return moving;
  }

  /** Horizontal spread of the last blocks, g; NaN until there are enough of them. */
  double swayG() {
    return swayG;
  }

  /** Blocks up to now that were quiet without a break, as far as a mean may reach back. */
  int quietBlocks() {
    return Math.max(quietBlocks, SEEN - 2);
  }

  /**
   * Takes the next block.
   *
   * @param x forward, g
   * @param y left, g
   * @param z up, g
   * @param vibrationG spread of single samples, all axes, g
   */
  void accept(double x, double y, double z, double vibrationG) {
    for (double[] axis : recent) {
      System.arraycopy(axis, 0, axis, 1, KEPT - 1);
    }
    recent[0][0] = x;
    recent[1][0] = y;
    recent[2][0] = z;
    filled = Math.min(filled + 1, KEPT);
    if (filled < SEEN) {
      return;
    }
    swayG = Math.hypot(spread(0), spread(1));
    // The two oldest of the first may still be loud.
    quietBlocks = swayG < atLeast(QUIET_G) ? Math.max(quietBlocks + 1, SEEN - 2) : 0;
    if (resting) {
      stay(swayG, spread(2), vibrationG);
    } else {
      settle(swayG, spread(2), vibrationG);
    }
  }

  private void settle(double sway, double heave, double vibrationG) {
    sinceJoltS = isJolt() ? 0 : sinceJoltS + SampleBlock.HOP_S;
    double rate = quietRate(sway, heave) * belief(vibrationG);
    quietS = rate > 0 ? quietS + rate * SampleBlock.HOP_S : 0;
    moving |= quietS == 0;
    if (quietS >= BELIEVED_AFTER_S) {
      resting = true;
      moving = false;
      roadS = 0;
      filled = SEEN;
      vibrationAtRestG = vibrationG;
    }
  }

  /** The jolt that ends a braking: the force jumps, and not away from the lean last known. */
  private boolean isJolt() {
    if (departure() < JOLT_G) {
      return false;
    }
    double before = Math.hypot(median(0, 6, KEPT) - restX, median(1, 6, KEPT) - restY);
    double after = Math.hypot(median(0, 0, 3) - restX, median(1, 0, 3) - restY);
    return vibrationAtRestG == 0 || after < before;
  }

  /** How fast quiet is taken for rest: slower where smooth rails or smooth tar may explain it. */
  private double belief(double vibrationG) {
    double rate = sinceJoltS < JOLT_COUNTS_FOR_S ? 1 : WITHOUT_JOLT_RATE;
    double allowed = MORE_VIBRATION * vibrationAtRestG;
    if (allowed > 0 && vibrationG > allowed) {
      rate *= allowed * allowed / (vibrationG * vibrationG);
      double lean = Math.hypot(median(0, 0, SEEN) - restX, median(1, 0, SEEN) - restY);
      rate *= lean > OTHER_LEAN_G ? OTHER_LEAN_RATE : 1;
    }
    return rate;
  }

  private double quietRate(double sway, double heave) {
    boolean jolted = sinceJoltS < JOLT_COUNTS_FOR_S;
    if (sway < atLeast(jolted ? SWAYING_G : QUIET_G)) {
      return heave < atLeast(QUIET_HEAVE_G) ? 1 : heave < atLeast(SWINGING_G) ? 0.4 : 0;
    }
    return heave < atLeast(NO_HEAVE_G) && sway < atLeast(ROCKING_G) ? 0.2 : 0;
  }

  private void stay(double sway, double heave, double vibrationG) {
    if (departure() < atLeast(DEPARTURE_G) / 2) {
      // Follows the median.
      vibrationAtRestG *= vibrationG > vibrationAtRestG ? 1.03 : 0.97;
      restX = median(0, 0, SEEN);
      restY = median(1, 0, SEEN);
    }
    boolean road = sway > atLeast(ROAD_G) && heave > atLeast(ROAD_HEAVE_G);
    roadS = Math.max(0, roadS + (road ? 1 : -1) * SampleBlock.HOP_S);
    boolean rough = heave > atLeast(ROUGH_G) && road;
    if (departure() > atLeast(DEPARTURE_G) || rough || roadS > ROAD_FOR_S) {
      resting = false;
      moving = true;
      quietS = 0;
      sinceJoltS = JOLT_COUNTS_FOR_S;
    }
  }

  private double atLeast(double g) {
    return Math.max(g, 4 * noiseG);
  }

  /** How far the last three blocks lie from those before, horizontally, g. */
  private double departure() {
    if (filled < KEPT) {
      return 0;
    }
    return Math.hypot(median(0, 0, 3) - median(0, 6, KEPT), median(1, 0, 3) - median(1, 6, KEPT));
  }

  /** Spread of the blocks seen that two wild ones do not reach: near one standard deviation. */
  private double spread(int axis) {
    double middle = median(axis, 0, SEEN);
    for (int i = 0; i < SEEN; i++) {
      sorted[i] = Math.abs(recent[axis][i] - middle);
    }
    Arrays.sort(sorted, 0, SEEN);
    return sorted[SEEN - 3];
  }

  private double median(int axis, int from, int to) {
    System.arraycopy(recent[axis], from, sorted, 0, to - from);
    Arrays.sort(sorted, 0, to - from);
    return sorted[(to - from) / 2];
  }
}
