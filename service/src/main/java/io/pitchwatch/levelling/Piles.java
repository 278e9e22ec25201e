package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the pads that could stand under the feet of the jacks leave the lifts of the wheels: at
 * least one way to share them out has to keep every foot inside its stroke.
 */
final class Piles {

  /** Nothing is asked. */
  static Piles any() {
    return new Piles(List.of(), List.of());
  }

  private static final double ROUNDING_MM = 1e-6;

  private final List<List<Limit>> feet;
  private final List<double[]> ways;

  /**
   * Piles under feet.
   *
   * @param feet what limits the lifts without a pad under each foot; a pad loosens it by its height
   * @param ways height of the pile under each foot, millimetres
   */
  Piles(List<List<Limit>> feet, List<double[]> ways) {
    this.feet = feet;
    this.ways = ways;
  }

  /** Whether anything is asked. */
  boolean ask() {
    return !feet.isEmpty();
  }

  /** The same for lifts that all lie in this box: without what makes no difference there. */
  Piles within(Box box) {
    double[] least = new double[feet.size()];
    double[] most = new double[feet.size()];
    for (int i = 0; i < least.length; i++) {
      least[i] = needMm(i, box);
      most[i] =
          feet.get(i).stream().mapToDouble(limit -> limit.mostOverMm(box)).max().orElseThrow();
    }
    List<double[]> left = new ArrayList<>();
    for (double[] way : ways) {
      if (isEnough(way, most)) {
        return any();
      }
      if (isEnough(way, least)) {
        double[] useful = new double[way.length];
        Arrays.setAll(useful, i -> Math.min(way[i], Math.max(0, most[i] + 2 * ROUNDING_MM)));
        add(useful, left);
      }
    }
    return new Piles(feet, left);
  }

  /** Adds a way unless another is as good; leaves out those that are no better than it. */
  static void add(double[] way, List<double[]> ways) {
    for (double[] other : ways) {
      if (isEnough(other, way)) {
        return;
      }
    }
    ways.removeIf(other -> isEnough(way, other));
    ways.add(way);
  }

  private static boolean isEnough(double[] way, double[] needMm) {
    for (int i = 0; i < way.length; i++) {
      if (way[i] < needMm[i] - ROUNDING_MM) {
        return false;
      }
    }
    return true;
  }

  /** What pile a foot needs at the least. */
  private double needMm(int foot, Box box) {
    double need = Double.NEGATIVE_INFINITY;
    for (Limit limit : feet.get(foot)) {
      need = Math.max(need, limit.leastOverMm(box));
    }
    return need;
  }

  /** Whether one way does for lifts that are all chosen. */
  boolean hold(Box chosen) {
    if (!ask()) {
      return true;
    }
    double[] need = new double[feet.size()];
    Arrays.setAll(need, i -> needMm(i, chosen));
    for (double[] way : ways) {
      if (isEnough(way, need)) {
        return true;
      }
    }
    return false;
  }

  /** What mean lifts of one axle the ways leave together, millimetres. */
  Range meanMm(int k, Box box) {
    return leave((limit, mm) -> limit.meanMm(k, box, mm));
  }

  /** How far apart they leave the stations of one axle, millimetres. */
  Range apartMm(int k, Box box) {
    return leave((limit, mm) -> limit.apartMm(k, box, mm));
  }

  /** What a limit leaves if it is so much looser. */
  private interface Leaves {
    Range range(Limit limit, double looserMm);
  }

  private Range leave(Leaves leaves) {
    if (!ask()) {
      return Range.ANY;
    }
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (double[] way : ways) {
      Range range = Range.ANY;
      for (int i = 0; i < way.length; i++) {
        for (Limit limit : feet.get(i)) {
          range = range.and(leaves.range(limit, way[i] + ROUNDING_MM));
        }
      }
      if (range.from() <= range.to()) {
        from = Math.min(from, range.from());
        to = Math.max(to, range.to());
      }
    }
    return new Range(from, to);
  }
}
