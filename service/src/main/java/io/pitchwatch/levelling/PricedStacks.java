package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import io.pitchwatch.levelling.Prices.Budget;
import java.util.List;
import java.util.function.IntPredicate;

/** Stacks of equally many pieces by height ascending, with what each costs at several prices. */
final class PricedStacks {

  final int count;
  final double[] heightMm;

  private final List<Stack> stacks;
  private final Fitting fitting;
  private final int[] limits;
  private final long[] room;
  private List<Budget> budgets = List.of();

  /** What the stacks cost, one after the other at the first price, then at the next. */
  private double[] cost = {};

  private double[] least = {};

  /** Stacks, at least one, without prices. */
  PricedStacks(List<Stack> stacks) {
    this.stacks = stacks;
    count = stacks.size();
    heightMm = stacks.stream().mapToDouble(Stack::heightMm).toArray();
    long[][] uses = stacks.stream().map(Stack::use).toArray(long[][]::new);
    room = new long[uses[0].length];
    limits = new int[Inventory.kinds(room)];
    fitting = Fitting.of(uses);
  }

  /** From now on they cost as in these budgets. */
  void price(List<Budget> at) {
    if (at == budgets) {
      return;
    }
    budgets = at;
    cost = new double[at.size() * count];
    least = new double[at.size()];
    for (int p = 0; p < least.length; p++) {
      least[p] = Double.POSITIVE_INFINITY;
      for (int i = 0; i < count; i++) {
        double each = Inventory.cost(stacks.get(i).use(), at.get(p).price());
        cost[p * count + i] = each;
        least[p] = Math.min(least[p], each);
      }
    }
  }

  Stack get(int i) {
    return stacks.get(i);
  }

  /**
   * What one stack leaves of the budgets.
   *
   * @param i the stack
   * @param leftover is written here, by price
   */
  void leave(int i, double[] leftover) {
    for (int p = 0; p < leftover.length; p++) {
      leftover[p] = budgets.get(p).most() - cost[p * count + i];
    }
  }

  /** Whether any stack could be afforded out of these leftovers. */
  boolean anyAffordable(double[] leftover) {
    for (int p = 0; p < leftover.length; p++) {
      if (least[p] > leftover[p]) {
        return false;
      }
    }
    return true;
  }

  /** Whether one can. */
  boolean isAffordable(int i, double[] leftover) {
    for (int p = 0; p < leftover.length; p++) {
      if (cost[p * count + i] > leftover[p]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Visits those that fit into what there is, by height.
   *
   * @param there pieces, packed
   * @param taken of these, no more than there are
   * @param tallMm least and most height
   * @param visit says whether to go on
   */
  void visit(long[] there, long[] taken, Range tallMm, IntPredicate visit) {
    int from = Sorted.from(heightMm, tallMm.from());
    int to = Sorted.from(heightMm, Math.nextUp(tallMm.to()));
    if (from < to) {
      Inventory.take(there, taken, room);
      Inventory.unpack(room, limits);
      fitting.visit(limits, from, to, visit);
    }
  }
}
