package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Flights.Flight;
import io.pitchwatch.levelling.Prices.Budget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All stacks that could stand under one station of an axle, by the number of pieces they take. Of
 * two equally tall stacks one that takes no less of any kind is left out.
 *
 * <p>Built flight by flight from the topmost down, because then it is known how often a flight's
 * layers are used when it is placed: once, twice, and so on. What holds for stacks holds for upper
 * parts: of two equally tall ones of as many flights, the one that takes no less is left out, for
 * what goes under the one goes under the other.
 *
 * <p>Flights are packed from the top: a layer that would fit into a flight above is used once less
 * there, so a stack with such a layer takes more than another one as tall. Only a layer that alone
 * may lie on the ground has to stay where it is.
 */
final class Stacks {

  private final List<Flight> flights;
  private final int[] counts;
  private final int[] abreast;
  private final long stepNm;
  private final List<Kind> kinds;
  private final double fullMm;
  private final long stackNm;
  private final boolean mayBeEmpty;
  private final boolean anyOnGround;

  /** Upper parts by their number of flights less one, then by pieces. */
  private final List<Parts> uppers = new ArrayList<>();

  private final List<List<long[]>> usesByTimes = new ArrayList<>();
  private final Parts whole = new Parts();
  private final long[] onBoard;
  private final Stack ground;
  private long lowNm;
  private long highNm;
  private int made;
  private @Nullable Other other;
  private List<Fill> fills = List.of();
  private double[] most = {};

  /** Undominated stacks, or upper parts, by pieces. */
  private static final class Parts {
    final List<List<Stack>> byPieces = new ArrayList<>();
    final Map<Long, List<long[]>> byHeight = new HashMap<>();

    List<Stack> of(int pieces) {
      while (byPieces.size() <= pieces) {
        byPieces.add(new ArrayList<>());
      }
      return byPieces.get(pieces);
    }

    /** Adds it unless there is one that takes no more; those of fewer pieces come first. */
    boolean add(Stack part) {
      List<long[]> asTall = byHeight.computeIfAbsent(part.heightNm(), h -> new ArrayList<>(2));
      for (long[] other : asTall) {
        if (Inventory.holds(/* there= */ part.use(), /* use= */ other)) {
          return false;
        }
      }
      asTall.add(part.use());
      of(part.pieces()).add(part);
      return true;
    }
  }

  /** What no stack exceeds. */
  record Limits(long stepNm, long stackNm) {}

  /**
   * Stacks of the given kinds.
   *
   * @param kinds usable under this station
   * @param counts pieces on board, by the index of the kind
   * @param limits tallest step and tallest stack
   * @param mayBeEmpty whether the station may stand on the ground
   */
  Stacks(List<Kind> kinds, int[] counts, Limits limits, boolean mayBeEmpty) {
    this.flights = Flights.of(kinds, counts, Math.min(limits.stepNm(), limits.stackNm()));
    this.counts = counts;
    this.abreast = new int[counts.length];
    kinds.forEach(kind -> abreast[kind.index()] = kind.abreast());
    this.stepNm = Math.min(limits.stepNm(), limits.stackNm());
    this.kinds = kinds;
    this.fullMm =
        flights.stream().mapToLong(Flight::heightNm).max().orElse(stepNm) / Kind.NM_PER_MM;
    this.stackNm = limits.stackNm();
    this.highNm = stackNm;
    this.mayBeEmpty = mayBeEmpty;
    this.anyOnGround = kinds.stream().allMatch(Kind::lowest);
    this.onBoard = Inventory.pack(counts);
    this.ground = new Stack(0, Inventory.pack(new int[counts.length]), 0, -1, null, null);
  }

  /**
   * From now on only stacks of these heights are wanted; what was asked for before keeps the wider
   * range it was made with.
   */
  void want(double lowMm, double highMm) {
    lowNm = Math.max(0, (long) Math.floor(lowMm * Kind.NM_PER_MM));
    highNm = Math.min(stackNm, (long) Math.ceil(highMm * Kind.NM_PER_MM));
  }

  /** Whether no height is wanted. */
  boolean wantsNone() {
    return lowNm > highNm;
  }

  /** The undominated stacks of exactly so many pieces, by height ascending. */
  List<Stack> ofPieces(int pieces) {
    for (; made <= pieces; made++) {
      make(made);
      whole.of(made).sort(Comparator.comparingLong(Stack::heightNm));
    }
    return whole.of(pieces);
  }

  /**
   * The two stations of an axle of which both are lifted.
   *
   * @param leftMm least height under the left one
   * @param leftToMm most height under the left one
   * @param rightMm least height under the right one
   * @param lowMm least by which the right one is higher than the left one, may be negative
   * @param highMm most by which it is
   */
  record Other(double leftMm, double leftToMm, double rightMm, double lowMm, double highMm) {}

  /** From now on only stacks that, with what the other station needs, cost no more are wanted. */
  void afford(List<Budget> affordable, @Nullable Other besides) {
    other = besides;
    fills = affordable.stream().map(b -> fill(b.price())).toList();
    most = affordable.stream().mapToDouble(Budget::most).toArray();
  }

  Fill fill(double[] price) {
    return new Fill(kinds, price, fullMm);
  }

  /** At the price of an index among those last given. */
  Fill fill(int price) {
    return fills.get(price);
  }

  /** No stack is taller, millimetres. */
  double tallestMm() {
    double mm = 0;
    for (Kind kind : kinds) {
      int layers = counts[kind.index()] / kind.abreast();
      mm += layers * (kind.thicknessNm() / Kind.NM_PER_MM);
    }
    boolean any = kinds.stream().anyMatch(Kind::lowest);
    return any ? Math.min(mm, stackNm / Kind.NM_PER_MM) : 0;
  }

  /** Whether there is something under the station in any case. */
  boolean grounded() {
    return !mayBeEmpty;
  }

  /** Whether what is spent, and what has to follow, can be afforded. */
  private boolean isAffordable(long[] use, long heightNm, int times, boolean whole) {
    double heightMm = heightNm / Kind.NM_PER_MM;
    for (int i = 0; i < most.length; i++) {
      Fill fill = fills.get(i);
      double leftover = most[i] - fill.spent(use);
      double lowMm = lowNm / Kind.NM_PER_MM;
      boolean affordable =
          other == null
              ? (whole ? 0 : fill.completion(times, lowMm - heightMm)) <= leftover
              : goesRight(fill, heightMm, whole ? 0 : times, other) <= leftover
                  || goesLeft(fill, heightMm, whole ? 0 : times, other) <= leftover;
      if (!affordable) {
        return false;
      }
    }
    return true;
  }

  /** What follows at the least if this goes under the right station; 0 flights for a whole one. */
  private double goesRight(Fill fill, double heightMm, int flights, Other other) {
    if (flights == 0 && heightMm < other.rightMm() - 1e-5) {
      return Double.POSITIVE_INFINITY;
    }
    double more = flights == 0 ? 0 : fill.completion(flights, other.rightMm() - heightMm);
    double leftMm = Math.max(heightMm, other.rightMm()) - other.highMm();
    return more + beside(fill, Math.max(leftMm, other.leftMm()));
  }

  private double goesLeft(Fill fill, double heightMm, int flights, Other other) {
    if (heightMm > other.leftToMm() + 1e-5 || (flights == 0 && heightMm < other.leftMm() - 1e-5)) {
      return Double.POSITIVE_INFINITY;
    }
    double more = flights == 0 ? 0 : fill.completion(flights, other.leftMm() - heightMm);
    return more + beside(fill, Math.max(heightMm + other.lowMm(), other.rightMm()));
  }

  /** What the other station costs at the least. */
  private double beside(Fill fill, double heightMm) {
    return fill.leastCost(Math.max(heightMm, mayBeEmpty ? 0 : 1e-3), null);
  }

  private void make(int pieces) {
    if (pieces == 0) {
      if (mayBeEmpty) {
        whole.add(ground);
      }
      return;
    }
    for (int times = 1; times <= uppers.size() + 1 && times <= pieces; times++) {
      List<long[]> uses = uses(times);
      for (int f = 0; f < flights.size(); f++) {
        int left = pieces - times * flights.get(f).pieces();
        if (left < 0) {
          break;
        }
        if (uses.get(f) != Flights.NOT_THERE) {
          List<Stack> parts = times == 1 ? bottom(left) : uppers.get(times - 2).of(left);
          for (Stack above : parts) {
            put(flights.get(f), uses.get(f), above, times);
          }
        }
      }
    }
  }

  /** What stands on a topmost flight: nothing. */
  private List<Stack> bottom(int left) {
    return left == 0 ? List.of(ground) : List.of();
  }

  /** What each flight takes when it is used so many times over. */
  private List<long[]> uses(int times) {
    while (usesByTimes.size() < times) {
      int next = usesByTimes.size() + 1;
      usesByTimes.add(flights.stream().map(f -> f.use(next, abreast, counts)).toList());
    }
    return usesByTimes.get(times - 1);
  }

  /** Puts a flight, used so many times over, under an upper part. */
  private void put(Flight flight, long[] takes, Stack above, int times) {
    long heightNm = above.heightNm() + flight.heightNm();
    boolean packed = flight.thinnestNm() > above.roomNm();
    boolean maybeWhole =
        flight.lowest()
            && heightNm >= lowNm
            && (packed || (!anyOnGround && flight.thinnestAloftNm() > above.roomNm()));
    if (heightNm > highNm || !(packed || maybeWhole)) {
      return;
    }
    long[] use = Inventory.sum(above.use(), takes);
    if (!Inventory.holds(onBoard, use)) {
      return;
    }
    int pieces = above.pieces() + times * flight.pieces();
    long roomNm = Math.max(above.roomNm(), stepNm - flight.heightNm());
    Stack stack = new Stack(heightNm, use, pieces, roomNm, flight, above);
    if (maybeWhole && isAffordable(use, heightNm, times, true)) {
      whole.add(stack);
    }
    if (!packed || !isAffordable(use, heightNm, times, false)) {
      return;
    }
    while (uppers.size() < times) {
      uppers.add(new Parts());
    }
    uppers.get(times - 1).add(stack);
  }
}
