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
    lowMm = liftMm(lowRad);
    highMm = liftMm(highRad);
    if (both) {
      double least = Math.min(lowMeanMm + lowMm / 2, lowMeanMm - highMm / 2);
      double most = Math.max(highMeanMm + highMm / 2, highMeanMm - lowMm / 2);
      stacks.want(groundMm + least, groundMm + most);
    } else {
      stacks.want(groundMm + lowMm, groundMm + highMm);
    }
  }

  /** From the least to the most. */
  record Range(double from, double to) {}

  /** The lift that turns the axle by an angle; a right angle is more than any. */
  private double liftMm(double turnRad) {
    return turnRad >= Math.PI / 2 ? Double.MAX_VALUE : trackMm * Math.tan(Math.max(-1.5, turnRad));
  }

  /** Whether nothing could be what is wanted. */
  boolean wantsNone() {
    return lowRad > highRad || lowMeanMm > highMeanMm || stacks.wantsNone();
  }

  /** From now on only what costs no more is wanted. */
  void afford(List<Budget> affordable) {
    budgets = affordable;
    double rightMm = groundMm + Math.max(0, Math.max(lowMm, lowMeanMm + lowMm / 2));
    stacks.afford(affordable, both ? new Other(rightMm, lowMm, highMm) : null);
    version++;
  }

  @Override
  public double leastCost(double[] price, double @Nullable [] taken) {
    double apartMm = Math.max(0, lowMm);
    if (!both) {
      return stacks.leastCost(price, groundMm + apartMm, taken);
    }
    double lowerMm = Math.max(0, lowMeanMm - apartMm / 2) + groundMm;
    return stacks.leastCost(price, lowerMm, lowerMm + apartMm, taken);
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
    if (choice.turnRad() < lowRad
        || choice.turnRad() > highRad
        || choice.meanMm() < lowMeanMm - 1e-6
        || choice.meanMm() > highMeanMm + 1e-6) {
      return false;
    }
    for (Budget budget : budgets) {
      if (Inventory.cost(choice.use(), budget.price()) > budget.most()) {
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
      List<Stack> rights = stacks.ofPieces(pieces - n);
      for (Stack left : stacks.ofPieces(n)) {
        double leftMm = left.heightMm();
        double meanMm = groundMm - leftMm / 2;
        double fromMm = Math.max(leftMm + lowMm, 2 * (meanMm + lowMeanMm)) - 1e-6;
        double toMm = Math.min(leftMm + highMm, 2 * (meanMm + highMeanMm)) + 1e-6;
        for (int i = from(rights, fromMm); i < rights.size(); i++) {
          if (rights.get(i).heightMm() > toMm) {
            break;
          }
          pair(left, rights.get(i), pairs);
        }
      }
    }
    return pairs;
  }

  private static int from(List<Stack> byHeight, double leastMm) {
    int low = 0;
    int high = byHeight.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (byHeight.get(middle).heightMm() < leastMm) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private void pair(Stack left, Stack right, List<Choice> pairs) {
    long[] use = Inventory.sum(left.use(), right.use());
    if (Inventory.holds(onBoard, use)) {
      double liftMm = right.heightMm() - left.heightMm();
      double meanMm = (left.heightMm() + right.heightMm()) / 2 - groundMm;
      Choice choice = new Choice(Math.atan(liftMm / trackMm), meanMm, use, left, right);
      if (isWanted(choice)) {
        pairs.add(choice);
      }
    }
  }
}
