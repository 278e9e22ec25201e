package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

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

  /** What each way leaves. */
  private final double[] fromMm;

  private final double[] toMm;

  /**
   * Piles under feet.
   *
   * @param feet what limits the lifts without a pad under each foot; a pad loosens it by its height
   * @param ways height of the pile under each foot, millimetres
   */
  Piles(List<List<Limit>> feet, List<double[]> ways) {
    this.feet = feet;
    this.ways = ways;
    fromMm = new double[ways.size()];
    toMm = new double[ways.size()];
  }

  /** Whether anything is asked. */
  boolean ask() {
    return !feet.isEmpty();
  }

  /** The same for lifts that all lie in this box: without what makes no difference there. */
  Piles within(Box box) {
    List<List<Limit>> left = feet.stream().map(foot -> Limit.within(foot, box)).toList();
    double[] least = new double[feet.size()];
    double[] most = new double[feet.size()];
    for (int i = 0; i < least.length; i++) {
      least[i] = needMm(i, box);
      most[i] = left.get(i).stream().mapToDouble(limit -> limit.mostOverMm(box)).max().orElse(0);
    }
    List<double[]> useful = new ArrayList<>();
    for (double[] way : ways) {
      if (isEnough(way, most)) {
        return any();
      }
      if (isEnough(way, least)) {
        double[] asFar = new double[way.length];
        Arrays.setAll(asFar, i -> Math.min(way[i], most[i] + 2 * ROUNDING_MM));
        add(asFar, useful);
      }
    }
    return new Piles(left, useful);
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
    return leave(limit -> limit.meanFactor(k, box), limit -> limit.leavesMeanMm(k, box));
  }

  /** How far apart they leave the stations of one axle, millimetres. */
  Range apartMm(int k, Box box) {
    return leave(limit -> limit.apartFactor(k, box), limit -> limit.leavesApartMm(k, box));
  }

  private Range leave(ToDoubleFunction<Limit> factor, ToDoubleFunction<Limit> leavesMm) {
    if (!ask()) {
      return Range.ANY;
    }
    Arrays.fill(fromMm, Double.NEGATIVE_INFINITY);
    Arrays.fill(toMm, Double.POSITIVE_INFINITY);
    for (int i = 0; i < feet.size(); i++) {
      for (Limit limit : feet.get(i)) {
        double times = factor.applyAsDouble(limit);
        if (times != 0) {
          leave(i, times, leavesMm.applyAsDouble(limit));
        }
      }
    }
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int w = 0; w < fromMm.length; w++) {
      if (fromMm[w] <= toMm[w]) {
        from = Math.min(from, fromMm[w]);
        to = Math.max(to, toMm[w]);
      }
    }
    return new Range(from, to);
  }

  private void leave(int foot, double times, double leavesMm) {
    for (int w = 0; w < fromMm.length; w++) {
      double edgeMm = (leavesMm + ways.get(w)[foot] + ROUNDING_MM) / times;
      if (times > 0) {
        toMm[w] = Math.min(toMm[w], edgeMm);
      } else {
        fromMm[w] = Math.max(fromMm[w], edgeMm);
      }
    }
  }
}
