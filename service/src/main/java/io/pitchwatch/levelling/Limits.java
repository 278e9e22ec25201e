package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import java.util.ArrayList;
import java.util.List;

/** What limits the axles' lifts beside roll, pitch and twist. */
final class Limits {

  private static final double ROUNDING_MM = 1e-9;

  /** An axle over the middle of the springs pitches nothing. */
  private static final double LEAST_SLOPE = 1e-9;

  private final List<Limit> all;
  private final Piles piles;

  /** Whether it matters how far an axle's stations are apart. */
  final boolean askApart;

  /**
   * Limits of lifts.
   *
   * @param all to be kept
   * @param piles one of which has to do
   */
  Limits(List<Limit> all, Piles piles) {
    this.all = List.copyOf(all);
    this.piles = piles;
    askApart = piles.ask();
  }

  /** No axle between the outer ones hangs from a body that lies on these. */
  static List<Limit> noneHangs(Stance stance) {
    List<Limit> limits = new ArrayList<>();
    for (int k = 1; k < stance.axles - 1; k++) {
      limits.add(fromTheLine(stance, k, -1, stance.droopMm[k]));
    }
    return limits;
  }

  /**
   * The axles between the outer ones stand so near to the line through these that the springs pitch
   * the body by no more from it, radians, more than 0.
   */
  static List<Limit> nearTheLine(Stance stance, double rad) {
    List<Limit> limits = new ArrayList<>();
    for (int k = 1; k < stance.axles - 1; k++) {
      double nearMm = nearMm(stance, k, rad);
      limits.add(fromTheLine(stance, k, -1, Math.min(nearMm, stance.droopMm[k])));
      limits.add(fromTheLine(stance, k, 1, nearMm));
    }
    return limits;
  }

  /** The most that this can make of how far the body is from each axle, millimetres. */
  static double[] sagMm(Stance stance, double rad) {
    double[] mostMm = new double[stance.axles];
    for (int k = 1; k < stance.axles - 1; k++) {
      double nearMm = nearMm(stance, k, rad);
      Stance.Rest rest = stance.restOn(k);
      for (int i = 0; i < mostMm.length; i++) {
        mostMm[i] += nearMm * Math.abs(rest.atMm(stance.xMm[i]) - (i == k ? 1 : 0));
      }
    }
    return mostMm;
  }

  private static double nearMm(Stance stance, int k, double rad) {
    double slope = Math.max(LEAST_SLOPE, Math.abs(stance.restOn(k).slope()));
    return Math.tan(rad) / slope / (stance.axles - 2);
  }

  /** Above the line through the outer axles, or below it where the sign is −1. */
  private static Limit fromTheLine(Stance stance, int k, int sign, double mostMm) {
    double along = (stance.xMm[0] - stance.xMm[k]) / stance.wheelbaseMm();
    double[] perMean = new double[stance.axles];
    perMean[k] = sign;
    perMean[0] = -sign * (1 - along);
    perMean[stance.axles - 1] = -sign * along;
    return new Limit(perMean, new double[stance.axles], mostMm);
  }

  /** The same for lifts that all lie in this box. */
  Limits within(Box box) {
    return new Limits(Limit.within(all, box), piles.within(box));
  }

  /** Whether lifts that are all chosen keep to it. */
  boolean hold(Box chosen) {
    for (Limit limit : all) {
      if (limit.leastOverMm(chosen) > ROUNDING_MM) {
        return false;
      }
    }
    return piles.hold(chosen);
  }

  /** What mean lifts of one axle the others leave, millimetres. */
  Range meanMm(int k, Box box) {
    Range range = piles.meanMm(k, box);
    for (Limit limit : all) {
      range = range.and(edge(limit.meanFactor(k, box), limit.leavesMeanMm(k, box)));
    }
    return range;
  }

  /** How far apart they leave the stations of one axle, millimetres. */
  Range apartMm(int k, Box box) {
    Range range = piles.apartMm(k, box);
    for (Limit limit : all) {
      range = range.and(edge(limit.apartFactor(k, box), limit.leavesApartMm(k, box)));
    }
    return range;
  }

  /** What is at most so much, divided by its factor. */
  private static Range edge(double factor, double mostMm) {
    return new Range(
        factor < 0 ? mostMm / factor : Double.NEGATIVE_INFINITY,
        factor > 0 ? mostMm / factor : Double.POSITIVE_INFINITY);
  }
}
