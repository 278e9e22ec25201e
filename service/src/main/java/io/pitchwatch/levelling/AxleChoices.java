package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Choice;
import io.pitchwatch.levelling.Prices.Budget;
import io.pitchwatch.levelling.Stacks.Other;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under one axle, by the number of pieces: under its right station alone, or under
 * both.
 */
final class AxleChoices implements Prices.Need {

  private final Stacks stacks;
  private final long[] onBoard;
  private final double trackMm;
  private final double groundMm;
  private final boolean both;
  private final List<Choices> byPieces = new ArrayList<>();
  private final List<Integer> versions = new ArrayList<>();
  private List<Budget> budgets = List.of();
  private Others others = (price, turnRad, meanMm) -> 0;
  private int version;
  private double lowRad;
  private double highRad;
  private double lowMm;
  private double highMm;
  private double lowMeanMm;
  private double highMeanMm;

  /**
   * The choices of an axle.
   *
   * @param stacks of one of its stations
   * @param onBoard pieces, packed
   * @param trackMm between its stations
   * @param groundMm thickness of what lies under every tyre and so turns nothing
   * @param both whether both stations may be lifted, or the right one alone
   */
  AxleChoices(Stacks stacks, long[] onBoard, double trackMm, double groundMm, boolean both) {
    this.stacks = stacks;
    this.onBoard = onBoard;
    this.trackMm = trackMm;
    this.groundMm = groundMm;
    this.both = both;
  }

  /**
   * From now on only choices that turn the axle, and lift it in the mean, by so much are wanted.
   *
   * @param turn least and most, radians
   * @param mean least and most, millimetres
   */
  void want(Range turn, Range mean) {
    lowRad = turn.from();
    highRad = turn.to();
    lowMeanMm = mean.from();
    highMeanMm = mean.to();
    lowMm = trackMm * Math.tan(lowRad);
    highMm = trackMm * Math.tan(highRad);
    if (both) {
      double leastMm = Math.min(leastLeftMm(), leastRightMm());
      stacks.want(leastMm, groundMm + highMeanMm + Math.max(highMm, -lowMm) / 2);
    } else {
      stacks.want(groundMm + lowMm, groundMm + highMm);
    }
  }

  /** From the least to the most. */
  record Range(double from, double to) {}

  private double leastLeftMm() {
    return groundMm + Math.max(0, lowMeanMm - highMm / 2);
  }

  private double leastRightMm() {
    return groundMm + Math.max(0, Math.max(lowMm, lowMeanMm + lowMm / 2));
  }

  /** Whether both stations may be lifted. */
  boolean both() {
    return both;
  }

  /** No lift of a station, over what lies under every tyre, is more. */
  double tallestMm() {
    return Math.max(0, stacks.tallestMm() - groundMm);
  }

  /** Whether nothing could be what is wanted. */
  boolean wantsNone() {
    return stacks.wantsNone();
  }

  /**
   * From now on only what costs no more is wanted.
   *
   * @param affordable at several prices
   * @param besides what the other axles cost at the least
   */
  void afford(List<Budget> affordable, Others besides) {
    budgets = affordable;
    others = besides;
    double mostLeftMm = groundMm + highMeanMm - lowMm / 2;
    Other other = new Other(leastLeftMm(), mostLeftMm, leastRightMm(), lowMm, highMm);
    stacks.afford(affordable, both ? other : null);
    version++;
  }

  /** What the other axles cost at the least, given a choice for this one. */
  interface Others {
    /** At the price of an index. */
    double leastCost(int price, double turnRad, double meanMm);
  }

  @Override
  public double leastCost(double[] price, double @Nullable [] taken) {
    return leastCost(stacks.fill(price), new Range(lowRad, lowMeanMm), taken);
  }

  /** The least that the axle costs if it turns, and is lifted in the mean, by no less. */
  double leastCost(int price, double turnRad, double leastMeanMm) {
    return leastCost(stacks.fill(price), new Range(turnRad, leastMeanMm), null);
  }

  private double leastCost(Fill fill, Range least, double @Nullable [] taken) {
    // An angle is less than its tangent, and the least is what is asked for.
    double apartMm = Math.max(0, trackMm * least.from());
    if (!both) {
      return fill.leastCost(groundMm + apartMm, taken);
    }
    double lowerMm = Math.max(0, least.to() - apartMm / 2) + groundMm;
    return fill.leastCost(lowerMm, lowerMm + apartMm, stacks.grounded(), taken);
  }

  /** The choices of exactly so many pieces. */
  Choices ofPieces(int pieces) {
    while (byPieces.size() <= pieces) {
      int next = byPieces.size();
      byPieces.add(Choices.of(both ? pairs(next) : singles(next)));
      versions.add(version);
    }
    if (versions.get(pieces) != version) {
      byPieces.set(pieces, byPieces.get(pieces).only(this::isWanted));
      versions.set(pieces, version);
    }
    return byPieces.get(pieces);
  }

  private boolean isWanted(Choice choice) {
    if (choice.turnRad() < lowRad - 1e-9
        || choice.turnRad() > highRad + 1e-9
        || choice.meanMm() < lowMeanMm - 1e-5
        || choice.meanMm() > highMeanMm + 1e-5) {
      return false;
    }
    for (int p = 0; p < budgets.size(); p++) {
      double cost = Inventory.cost(choice.use(), budgets.get(p).price());
      if (cost > budgets.get(p).most()
          || cost + others.leastCost(p, choice.turnRad(), choice.meanMm())
              > budgets.get(p).inAll()) {
        return false;
      }
    }
    return true;
  }

  private List<Choice> singles(int pieces) {
    List<Choice> singles = new ArrayList<>();
    for (Stack stack : stacks.ofPieces(pieces)) {
      double liftMm = stack.heightMm() - groundMm;
      Choice choice = new Choice(Math.atan(liftMm / trackMm), liftMm / 2, stack.use(), null, stack);
      if (isWanted(choice)) {
        singles.add(choice);
      }
    }
    return singles;
  }

  private List<Choice> pairs(int pieces) {
    List<Choice> pairs = new ArrayList<>();
    for (int n = 0; n <= pieces; n++) {
      List<Stack> lefts = stacks.ofPieces(n);
      List<Stack> rights = stacks.ofPieces(pieces - n);
      if (lefts.isEmpty() || rights.isEmpty()) {
        continue;
      }
      PricedStacks priced = new PricedStacks(rights, budgets);
      for (Stack left : lefts) {
        pairs(left, priced, pairs);
      }
    }
    return pairs;
  }

  private void pairs(Stack left, PricedStacks rights, List<Choice> pairs) {
    double[] leftover = new double[budgets.size()];
    for (int p = 0; p < leftover.length; p++) {
      leftover[p] = budgets.get(p).most() - Inventory.cost(left.use(), budgets.get(p).price());
    }
    if (!PricedStacks.isAffordable(rights.least, leftover)) {
      return;
    }
    double leftMm = left.heightMm();
    double meanMm = groundMm - leftMm / 2;
    double fromMm = Math.max(leftMm + lowMm, 2 * (meanMm + lowMeanMm)) - 1e-5;
    double toMm = Math.min(leftMm + highMm, 2 * (meanMm + highMeanMm)) + 1e-5;
    for (int i = rights.from(fromMm); i < rights.cost.length; i++) {
      Stack right = rights.stacks.get(i);
      if (right.heightMm() > toMm) {
        return;
      }
      if (PricedStacks.isAffordable(rights.cost[i], leftover)
          && Inventory.holdsBoth(onBoard, left.use(), right.use())) {
        pair(left, right, pairs);
      }
    }
  }

  private void pair(Stack left, Stack right, List<Choice> pairs) {
    double liftMm = right.heightMm() - left.heightMm();
    double meanMm = (left.heightMm() + right.heightMm()) / 2 - groundMm;
    long[] use = Inventory.sum(left.use(), right.use());
    Choice choice = new Choice(Math.atan(liftMm / trackMm), meanMm, use, left, right);
    if (isWanted(choice)) {
      pairs.add(choice);
    }
  }
}
