package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Flights.Flight;
import io.pitchwatch.levelling.Prices.Budget;
import io.pitchwatch.levelling.Spending.Stations;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

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
  private final boolean allFlights;
  private final int[] counts;
  private final int[] abreast;
  private final long stepNm;
  private final List<Kind> kinds;
  private final double fullMm;
  private final Terms terms;
  private final boolean anyOnGround;

  /** Upper parts by their number of flights less one, then by pieces. */
  private final List<Parts> uppers = new ArrayList<>();

  private final List<TimedFlights> byTimes = new ArrayList<>();
  private final Parts whole;
  private final long[] onBoard;
  private final Stack ground;
  private long lowNm;
  private long highNm;
  private int made;
  private Spending spending;
  private Allowance allowance = new Allowance(Long.MAX_VALUE);

  /**
   * What is asked of the stacks.
   *
   * @param stepNm the tallest step
   * @param stackNm the tallest stack
   * @param mayBeEmpty whether the station may stand on the ground
   * @param rough whether a few good ones will do
   */
  record Terms(long stepNm, long stackNm, boolean mayBeEmpty, boolean rough) {}

  /**
   * Stacks of the given kinds.
   *
   * @param kinds usable under this station
   * @param counts pieces on board, by the index of the kind
   * @param terms what is asked of them
   */
  Stacks(List<Kind> kinds, int[] counts, Terms terms) {
    this.stepNm = Math.min(terms.stepNm(), terms.stackNm());
    this.terms = terms;
    Flights.Made made = Flights.of(kinds, counts, stepNm);
    this.flights = made.list();
    this.allFlights = made.all();
    this.counts = counts;
    this.abreast = new int[counts.length];
    kinds.forEach(kind -> abreast[kind.index()] = kind.abreast());
    this.kinds = kinds;
    this.fullMm =
        flights.stream().mapToLong(Flight::heightNm).max().orElse(stepNm) / Kind.NM_PER_MM;
    this.highNm = terms.stackNm();
    this.anyOnGround = kinds.stream().allMatch(Kind::lowest);
    this.onBoard = Inventory.pack(counts);
    this.whole = parts();
    this.spending =
        new Spending(List.of(), List.of(), new Stations(0, 0, 0, 0, 0, false), grounded());
    this.ground = new Stack(0, Inventory.pack(new int[counts.length]), 0, -1, null, null);
  }

  /** From now on nothing is made beyond this allowance. */
  void keepWithin(Allowance memory) {
    allowance = memory;
  }

  /** Whether a few good ones will do. */
  boolean isRough() {
    return terms.rough();
  }

  /** Whether no flight was left out because there are too many. */
  boolean hasAllFlights() {
    return allFlights;
  }

  /**
   * From now on only stacks of these heights are wanted; what was asked for before keeps the wider
   * range it was made with.
   */
  void want(double lowMm, double highMm) {
    lowNm = Math.max(0, (long) Math.floor(lowMm * Kind.NM_PER_MM));
    highNm = Math.min(terms.stackNm(), (long) Math.ceil(highMm * Kind.NM_PER_MM));
  }

  /** Whether no height is wanted. */
  boolean wantsNone() {
    return lowNm > highNm;
  }

  /** How many stacks and upper parts there are. */
  int size() {
    return whole.count() + uppers.stream().mapToInt(Parts::count).sum();
  }

  /** The undominated stacks of exactly so many pieces, by height ascending. */
  List<Stack> ofPieces(int pieces) {
    for (; made <= pieces; made++) {
      make(made);
      whole.of(made).sort(Comparator.comparingLong(Stack::heightNm));
    }
    return whole.of(pieces);
  }

  /** From now on only stacks are wanted that are affordable with what follows. */
  void afford(List<Budget> budgets, Stations wanted) {
    List<Fill> fills = budgets.stream().map(budget -> fill(budget.price())).toList();
    spending = new Spending(budgets, fills, wanted, grounded());
  }

  Fill fill(double[] price) {
    return new Fill(kinds, price, fullMm);
  }

  /** No stack is taller, millimetres. */
  double tallestMm() {
    double mm = 0;
    for (Kind kind : kinds) {
      int layers = counts[kind.index()] / kind.abreast();
      mm += layers * (kind.thicknessNm() / Kind.NM_PER_MM);
    }
    boolean any = kinds.stream().anyMatch(Kind::lowest);
    return any ? Math.min(mm, terms.stackNm() / Kind.NM_PER_MM) : 0;
  }

  /** Whether there is something under the station in any case. */
  boolean grounded() {
    return !terms.mayBeEmpty();
  }

  private Parts parts() {
    return new Parts(Arrays.copyOf(counts, Inventory.kinds(onBoard)), terms.rough());
  }

  private void make(int pieces) {
    if (pieces == 0) {
      if (terms.mayBeEmpty()) {
        whole.add(ground, 0);
      }
      return;
    }
    for (int times = 1; times <= uppers.size() + 1 && times <= pieces; times++) {
      for (int each = 1; times * each <= pieces; each++) {
        int left = pieces - times * each;
        List<Stack> parts = times == 1 ? bottom(left) : uppers.get(times - 2).of(left);
        for (int i = 0; i < parts.size() && !allowance.isSpent(); i++) {
          putUnder(parts.get(i), each, times);
        }
      }
    }
  }

  /** What stands on a topmost flight: nothing. */
  private List<Stack> bottom(int left) {
    return left == 0 ? List.of(ground) : List.of();
  }

  /** Puts every flight of so many pieces, used so many times over, under an upper part. */
  private void putUnder(Stack above, int pieces, int times) {
    while (byTimes.size() < times) {
      byTimes.add(new TimedFlights(flights, byTimes.size() + 1, abreast, counts, anyOnGround));
      allowance.take(byTimes.get(byTimes.size() - 1).words());
    }
    TimedFlights under = byTimes.get(times - 1);
    long[] left = new long[onBoard.length];
    Inventory.take(onBoard, above.use(), left);
    under.visit(
        pieces,
        left,
        above.roomNm(),
        highNm - above.heightNm(),
        f -> put(under.get(f), under.use(f), above, times));
  }

  private void put(Flight flight, long[] takes, Stack above, int times) {
    if (allowance.isSpent()) {
      return;
    }
    long heightNm = above.heightNm() + flight.heightNm();
    boolean packed = flight.thinnestNm() > above.roomNm();
    boolean maybeWhole =
        flight.lowest()
            && heightNm >= lowNm
            && (packed || (!anyOnGround && flight.thinnestAloftNm() > above.roomNm()));
    if (!packed && !maybeWhole) {
      return;
    }
    long[] use = Inventory.sum(above.use(), takes);
    int pieces = above.pieces() + times * flight.pieces();
    long roomNm = Math.max(above.roomNm(), stepNm - flight.heightNm());
    Stack stack = new Stack(heightNm, use, pieces, roomNm, flight, above);
    if (maybeWhole && spending.affords(use, stack.heightMm(), 0)) {
      allowance.take(whole.add(stack, spending.cost(use)));
    }
    if (!packed || !spending.affords(use, stack.heightMm(), times)) {
      return;
    }
    while (uppers.size() < times) {
      uppers.add(parts());
    }
    allowance.take(uppers.get(times - 1).add(stack, spending.cost(use)));
  }
}
