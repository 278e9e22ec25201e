package io.pitchwatch.levelling;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Prices of pieces that show what the inventory cannot give.
 *
 * <p>Put any price of 0 or more on each piece: if the cheapest stacks that the stations need cost
 * more together than everything on board, they cannot all be laid, and a stack that costs more than
 * the cheapest of the other stations leave over cannot be part of any plan. That holds for all
 * prices (it is weak duality of linear programming); prices that rise with what everybody would
 * take show most.
 */
final class Prices {

  private static final int ROUNDS = 24;
  private static final double PACE = 0.4;

  /** Rounding in sums of prices must never drop anything. */
  private static final double SLACK = 1e-9;

  private final double[] onBoard;
  private final double[] lowest;

  /**
   * What one axle may cost.
   *
   * @param price of a piece, by kind
   * @param most that the axle may cost
   */
  @SuppressWarnings("ArrayRecordComponent") // Nobody writes to it.
  record Budget(double[] price, double most) {}

  /** Somebody who needs pieces. */
  interface Need {
    /** The least that what is needed costs; adds what it would take. */
    double leastCost(double[] price, double @Nullable [] taken);
  }

  /**
   * Prices of pieces.
   *
   * @param counts on board, by kind
   * @param lowest for each kind, 1 if it may lie on the ground, else 0: every flight that is used
   *     again has one of these in it, so they may run out first
   */
  Prices(int[] counts, double[] lowest) {
    this.lowest = lowest;
    onBoard = new double[counts.length];
    for (int i = 0; i < counts.length; i++) {
      onBoard[i] = counts[i];
    }
  }

  /** For each need, what it may cost at the prices found. */
  List<List<Budget>> budgets(List<? extends Need> needs) {
    List<List<Budget>> all = new ArrayList<>();
    needs.forEach(need -> all.add(new ArrayList<>()));
    double[] price = new double[onBoard.length];
    for (int i = 0; i < price.length; i++) {
      price[i] = onBoard[i] > 0 ? 1 / onBoard[i] : 0;
    }
    double[] first = price.clone();
    double[] best = price;
    double bestRatio = -1;
    for (int round = 0; round < ROUNDS; round++) {
      double[] taken = new double[price.length];
      double cost = 0;
      for (Need need : needs) {
        cost += need.leastCost(price, taken);
      }
      double ratio = cost / worth(price);
      if (ratio > bestRatio) {
        bestRatio = ratio;
        best = price.clone();
      }
      price = price.clone();
      raise(price, taken);
    }
    add(best, needs, all);
    add(first, needs, all);
    add(lowest, needs, all);
    return all;
  }

  private double worth(double[] price) {
    double worth = 0;
    for (int i = 0; i < price.length; i++) {
      worth += price[i] * onBoard[i];
    }
    return worth;
  }

  /** Raises the price of what is taken most, in proportion to what there is of it. */
  private void raise(double[] price, double[] taken) {
    double most = 0;
    for (int i = 0; i < price.length; i++) {
      most = Math.max(most, onBoard[i] > 0 ? taken[i] / onBoard[i] : 0);
    }
    for (int i = 0; i < price.length && most > 0; i++) {
      if (onBoard[i] > 0) {
        price[i] *= Math.exp(PACE * taken[i] / onBoard[i] / most);
      }
    }
    double worth = worth(price);
    for (int i = 0; i < price.length && worth > 0; i++) {
      price[i] /= worth;
    }
  }

  private void add(double[] price, List<? extends Need> needs, List<List<Budget>> all) {
    double[] cost = new double[needs.size()];
    double sum = 0;
    for (int k = 0; k < cost.length; k++) {
      cost[k] = needs.get(k).leastCost(price, new double[price.length]);
      sum += cost[k];
    }
    for (int k = 0; k < cost.length; k++) {
      all.get(k).add(new Budget(price, worth(price) * (1 + SLACK) - (sum - cost[k])));
    }
  }
}
