package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import io.pitchwatch.levelling.Prices.Budget;
import io.pitchwatch.levelling.Spending.Stations;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under one axle, by the number of pieces: under its right station alone, or under
 * both.
 */
final class AxleChoices implements Prices.Need {

  /** Rounding must never leave out what lies on a limit. */
  private static final double ROUNDING_MM = 1e-5;

  /** A choice beside what it takes of each kind. */
  private static final int CHOICE_WORDS = 8;

  private final Stacks stacks;
  private final long[] onBoard;
  private final double trackMm;
  private final double groundMm;
  private final boolean both;
  private final List<Choices> byPieces = new ArrayList<>();
  private final Map<Integer, PricedStacks> priced = new HashMap<>();
  private final List<Integer> versions = new ArrayList<>();
  private Allowance allowance = new Allowance(Long.MAX_VALUE);
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

  /** From now on nothing is made beyond this allowance. */
  void keepWithin(Allowance memory) {
    allowance = memory;
    stacks.keepWithin(memory);
  }

  /** Whether a few good ones will do. */
  boolean isRough() {
    return stacks.isRough();
  }

  /** Whether no flight was left out because there are too many. */
  boolean hasAllFlights() {
    return stacks.hasAllFlights();
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

  /** From now on only what costs no more, at several prices, is wanted. */
  void afford(List<Budget> affordable) {
    budgets = affordable;
    stacks.afford(
        affordable,
        both
            ? new Stations(
                leastLeftMm(),
                groundMm + highMeanMm - lowMm / 2,
                leastRightMm(),
                lowMm,
                highMm,
                true)
            : new Stations(0, 0, groundMm + lowMm, 0, 0, false));
    version++;
  }

  @Override
  public double leastCost(double[] price, double @Nullable [] taken) {
    Fill fill = stacks.fill(price);
    double apartMm = Math.max(0, lowMm);
    if (!both) {
      return fill.leastCost(groundMm + apartMm, taken);
    }
    double lowerMm = Math.max(0, lowMeanMm - apartMm / 2) + groundMm;
    return fill.leastCost(lowerMm, lowerMm + apartMm, stacks.grounded(), taken);
  }

  /** How many stacks and choices there are so far. */
  int size() {
    return stacks.size() + byPieces.stream().mapToInt(choices -> choices.count).sum();
  }

  /** The choices of exactly so many pieces. */
  Choices ofPieces(int pieces) {
    while (byPieces.size() <= pieces) {
      int next = byPieces.size();
      Gathering gathering = both ? pairs(next) : singles(next);
      Choices choices = gathering.choices().only(this::isWanted);
      byPieces.add(choices);
      allowance.take((long) choices.count * (CHOICE_WORDS + onBoard.length));
      versions.add(version);
    }
    if (versions.get(pieces) != version) {
      byPieces.set(pieces, byPieces.get(pieces).only(this::isWanted));
      versions.set(pieces, version);
    }
    return byPieces.get(pieces);
  }

  private boolean isWanted(double turnRad, double meanMm, long[] use) {
    if (turnRad < lowRad - 1e-9
        || turnRad > highRad + 1e-9
        || meanMm < lowMeanMm - ROUNDING_MM
        || meanMm > highMeanMm + ROUNDING_MM) {
      return false;
    }
    for (int p = 0; p < budgets.size(); p++) {
      if (Inventory.cost(use, budgets.get(p).price()) > budgets.get(p).most()) {
        return false;
      }
    }
    return true;
  }

  private Gathering singles(int pieces) {
    Gathering singles = new Gathering(trackMm, groundMm, onBoard.length);
    stacks.ofPieces(pieces).forEach(stack -> singles.add(null, stack));
    return singles;
  }

  private Gathering pairs(int pieces) {
    Gathering pairs = new Gathering(trackMm, groundMm, onBoard.length);
    for (int n = 0; n <= pieces; n++) {
      if (!stacks.ofPieces(n).isEmpty()
          && !stacks.ofPieces(pieces - n).isEmpty()
          && !allowance.isSpent()) {
        PricedStacks lefts = priced(n);
        PricedStacks rights = priced(pieces - n);
        boolean fewLefts = lefts.count <= rights.count;
        pairs(fewLefts ? lefts : rights, fewLefts ? rights : lefts, fewLefts, pairs);
      }
    }
    return pairs;
  }

  private PricedStacks priced(int pieces) {
    PricedStacks stacks =
        priced.computeIfAbsent(pieces, n -> new PricedStacks(this.stacks.ofPieces(n)));
    stacks.price(budgets);
    return stacks;
  }

  /** Puts beside each of a few stacks the many that may stand on the other side. */
  private void pairs(PricedStacks few, PricedStacks many, boolean fewLefts, Gathering pairs) {
    double leastApartMm = fewLefts ? lowMm : -highMm;
    double mostApartMm = fewLefts ? highMm : -lowMm;
    double[] leftover = new double[budgets.size()];
    for (int i = 0; i < few.count && !allowance.isSpent(); i++) {
      double oneMm = few.heightMm[i];
      double fromMm = Math.max(oneMm + leastApartMm, 2 * (groundMm + lowMeanMm) - oneMm);
      double toMm = Math.min(oneMm + mostApartMm, 2 * (groundMm + highMeanMm) - oneMm);
      few.leave(i, leftover);
      if (fromMm <= toMm + 2 * ROUNDING_MM && many.anyAffordable(leftover)) {
        Stack one = few.get(i);
        Range heightMm = new Range(fromMm - ROUNDING_MM, toMm + ROUNDING_MM);
        many.visit(
            onBoard,
            one.use(),
            heightMm,
            j -> {
              if (many.isAffordable(j, leftover)) {
                pairs.add(fewLefts ? one : many.get(j), fewLefts ? many.get(j) : one);
              }
              return allowance.covers(pairs.words());
            });
      }
    }
  }
}
