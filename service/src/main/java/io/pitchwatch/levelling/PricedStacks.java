package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Prices.Budget;
import java.util.Arrays;
import java.util.List;

/** Stacks of equally many pieces by height ascending, with what each costs at several prices. */
final class PricedStacks {

  final List<Stack> stacks;

  /** By stack, then by price. */
  final double[][] cost;

  /** The least at each price. */
  final double[] least;

  PricedStacks(List<Stack> stacks, List<Budget> budgets) {
    this.stacks = stacks;
    cost = new double[stacks.size()][budgets.size()];
    least = new double[budgets.size()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < cost.length; i++) {
      for (int p = 0; p < least.length; p++) {
        cost[i][p] = Inventory.cost(stacks.get(i).use(), budgets.get(p).price());
        least[p] = Math.min(least[p], cost[i][p]);
      }
    }
  }

  /** Index of the first that is at least so tall. */
  int from(double leastMm) {
    int low = 0;
    int high = stacks.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stacks.get(middle).heightMm() < leastMm) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether costs leave nothing below zero. */
  static boolean isAffordable(double[] cost, double[] leftover) {
    for (int p = 0; p < cost.length; p++) {
      if (cost[p] > leftover[p]) {
        return false;
      }
    }
    return true;
  }
}
