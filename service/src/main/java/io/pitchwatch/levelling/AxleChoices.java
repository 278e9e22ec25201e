package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What could stand under one axle, by the number of pieces: under its right station alone, or under
 * both.
 */
final class AxleChoices {

  private final Stacks stacks;
  private final long[] onBoard;
  private final double trackMm;
  private final double groundMm;
  private final boolean both;
  private final List<List<Choices>> byPieces = new ArrayList<>();
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

  /** The least material, as thickness times pieces, that makes what is wanted. */
  double leastMaterialMm() {
    double apartMm = Math.max(0, lowMm);
    if (!both) {
      return stacks.leastMaterialMm(groundMm + apartMm);
    }
    // Material grows faster than height, so two stacks as near to each other as may be take least.
    double lowerMm = Math.max(0, lowMeanMm + groundMm - apartMm / 2);
    return stacks.leastMaterialMm(lowerMm) + stacks.leastMaterialMm(lowerMm + apartMm);
  }

  /** The choices of exactly so many pieces, by what they take. */
  List<Choices> ofPieces(int pieces) {
    while (byPieces.size() <= pieces) {
      int next = byPieces.size();
      Map<Use, List<Choice>> byUse = both ? pairs(next) : singles(next);
      List<Choices> choices = new ArrayList<>(byUse.size());
      byUse.forEach((use, alike) -> choices.add(new Choices(use.words(), alike)));
      byPieces.add(choices);
    }
    return byPieces.get(pieces);
  }

  /** Pieces by kind, as a key. */
  @SuppressWarnings("ArrayRecordComponent") // Equality is by content, below.
  private record Use(long[] words) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Use use && Arrays.equals(words, use.words);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(words);
    }
  }

  private Map<Use, List<Choice>> singles(int pieces) {
    Map<Use, List<Choice>> singles = new LinkedHashMap<>();
    for (Stack stack : stacks.ofPieces(pieces)) {
      double liftMm = stack.heightMm() - groundMm;
      double turnRad = Math.atan(liftMm / trackMm);
      if (turnRad >= lowRad && turnRad <= highRad) {
        singles
            .computeIfAbsent(new Use(stack.use()), u -> new ArrayList<>())
            .add(new Choice(turnRad, liftMm / 2, stack.heightMm(), null, stack));
      }
    }
    return singles;
  }

  private Map<Use, List<Choice>> pairs(int pieces) {
    Map<Use, List<Choice>> pairs = new LinkedHashMap<>();
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

  private void pair(Stack left, Stack right, Map<Use, List<Choice>> pairs) {
    double liftMm = right.heightMm() - left.heightMm();
    double meanMm = (left.heightMm() + right.heightMm()) / 2 - groundMm;
    long[] use = Inventory.sum(left.use(), right.use());
    if (Inventory.holds(onBoard, use)) {
      double tallestMm = Math.max(left.heightMm(), right.heightMm());
      pairs
          .computeIfAbsent(new Use(use), u -> new ArrayList<>())
          .add(new Choice(Math.atan(liftMm / trackMm), meanMm, tallestMm, left, right));
    }
  }
}
