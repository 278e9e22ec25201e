package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Prices.Budget;
import java.util.List;

/** What a stack may cost, at several prices, with what has to follow under it and beside it. */
final class Spending {

  private static final double ROUNDING_MM = 1e-5;

  /** Less than any piece. */
  private static final double THIN_MM = 1e-3;

  private final List<Budget> budgets;
  private final List<Fill> fills;
  private final Stations stations;
  private final boolean grounded;

  /**
   * What is wanted of the two stations of an axle.
   *
   * @param leftMm least height under the left one
   * @param leftToMm most height under the left one
   * @param rightMm least height under the right one
   * @param lowMm least by which the right one is higher than the left one, may be negative
   * @param highMm most by which it is
   * @param both whether both are lifted, or the right one alone
   */
  record Stations(
      double leftMm, double leftToMm, double rightMm, double lowMm, double highMm, boolean both) {}

  /**
   * Spending at several prices.
   *
   * @param budgets at most this
   * @param fills what height costs at the least, at these prices
   * @param stations what is wanted of them
   * @param grounded whether there is something under either in any case
   */
  Spending(List<Budget> budgets, List<Fill> fills, Stations stations, boolean grounded) {
    this.budgets = budgets;
    this.fills = fills;
    this.stations = stations;
    this.grounded = grounded;
  }

  /** At the price that shows most. */
  double cost(long[] use) {
    return fills.isEmpty() ? 0 : fills.get(0).spent(use);
  }

  /**
   * Whether a stack can be afforded, with what has to follow.
   *
   * @param use pieces it takes
   * @param heightMm of it
   * @param flights of an upper part, under which at least one more follows; 0 for a whole stack
   */
  boolean affords(long[] use, double heightMm, int flights) {
    for (int i = 0; i < fills.size(); i++) {
      Fill fill = fills.get(i);
      double leftover = budgets.get(i).most() - fill.spent(use);
      boolean affordable =
          stations.both()
              ? right(fill, heightMm, flights) <= leftover
                  || left(fill, heightMm, flights) <= leftover
              : under(fill, heightMm, flights, stations.rightMm()) <= leftover;
      if (!affordable) {
        return false;
      }
    }
    return true;
  }

  /** What follows under it at the least, up to the least height wanted there. */
  private static double under(Fill fill, double heightMm, int flights, double leastMm) {
    if (flights == 0) {
      return heightMm < leastMm - ROUNDING_MM ? Double.POSITIVE_INFINITY : 0;
    }
    return fill.completion(flights, leastMm - heightMm);
  }

  /** What follows at the least if this goes under the right station. */
  private double right(Fill fill, double heightMm, int flights) {
    double leftMm = Math.max(heightMm, stations.rightMm()) - stations.highMm();
    return under(fill, heightMm, flights, stations.rightMm())
        + beside(fill, Math.max(leftMm, stations.leftMm()));
  }

  /** What follows at the least if it goes under the left one. */
  private double left(Fill fill, double heightMm, int flights) {
    if (heightMm > stations.leftToMm() + ROUNDING_MM) {
      return Double.POSITIVE_INFINITY;
    }
    return under(fill, heightMm, flights, stations.leftMm())
        + beside(fill, Math.max(heightMm + stations.lowMm(), stations.rightMm()));
  }

  /** What the other station costs at the least. */
  private double beside(Fill fill, double heightMm) {
    return fill.leastCost(Math.max(heightMm, grounded ? THIN_MM : 0), null);
  }
}
