package io.pitchwatch.levelling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All flights that a station's kinds make: layers that together are no taller than one step. Of two
 * equally tall ones, one that takes no less of any kind is left out.
 */
final class Flights {

  /** More than any coach had in trials; beyond it the thinnest kinds are left out. */
  private static final int MOST = 6000;

  private final List<Kind> kinds;
  private final int[] counts;
  private final long stepNm;
  private final int[] layers;
  private final List<Flight> found = new ArrayList<>();

  /**
   * One flight.
   *
   * @param layers how many layers of each kind, by the kind's index among the coach's pieces
   * @param heightNm nanometres
   * @param pieces that one such flight takes
   * @param lowest whether it may be the lowest, for a layer of it may lie on the ground
   * @param thinnestNm its thinnest layer
   * @param thinnestAloftNm its thinnest layer that may not lie on the ground
   */
  @SuppressWarnings("ArrayRecordComponent") // Made once; nobody writes to it.
  record Flight(
      int[] layers,
      long heightNm,
      int pieces,
      boolean lowest,
      long thinnestNm,
      long thinnestAloftNm) {

    /** Whether there are enough pieces to use it so many times. */
    boolean isThere(int times, int[] abreast, int[] counts) {
      for (int i = 0; i < layers.length; i++) {
        if (layers[i] * abreast[i] * times > counts[i]) {
          return false;
        }
      }
      return true;
    }

    /** What so many of it take, packed. */
    long[] use(int times, int[] abreast) {
      int[] use = new int[layers.length];
      for (int i = 0; i < use.length; i++) {
        use[i] = layers[i] * abreast[i] * times;
      }
      return Inventory.pack(use);
    }
  }

  private Flights(List<Kind> kinds, int[] counts, long stepNm) {
    this.kinds = kinds;
    this.counts = counts;
    this.stepNm = stepNm;
    this.layers = new int[counts.length];
  }

  /**
   * The flights of a station.
   *
   * @param list by pieces ascending, and of as many by height
   * @param all whether none was left out that could matter
   */
  record Made(List<Flight> list, boolean all) {}

  /** The flights of these kinds; where there are too many to compare, of the thicker ones. */
  static Made of(List<Kind> kinds, int[] counts, long stepNm) {
    List<Kind> some = kinds;
    Flights flights = new Flights(some, counts, stepNm);
    while (!flights.place(0, 0, 0)) {
      some = withoutThinnest(some);
      flights = new Flights(some, counts, stepNm);
    }
    return new Made(flights.undominated(), some.size() == kinds.size());
  }

  /** One kind less; something to lie on the ground remains. */
  private static List<Kind> withoutThinnest(List<Kind> kinds) {
    long lowest = kinds.stream().filter(Kind::lowest).count();
    Kind thinnest =
        kinds.stream()
            .filter(kind -> !kind.lowest() || lowest > 1)
            .min(Comparator.comparingLong(Kind::thicknessNm))
            .orElseThrow();
    return kinds.stream().filter(kind -> !kind.equals(thinnest)).toList();
  }

  private List<Flight> undominated() {
    found.sort(Comparator.comparingInt(Flight::pieces).thenComparingLong(Flight::heightNm));
    Map<Long, List<Flight>> byHeight = new HashMap<>();
    List<Flight> undominated = new ArrayList<>();
    for (Flight flight : found) {
      List<Flight> asTall = byHeight.computeIfAbsent(flight.heightNm(), h -> new ArrayList<>());
      if (asTall.stream().noneMatch(other -> dominates(other, flight))) {
        asTall.add(flight);
        undominated.add(flight);
      }
    }
    return undominated;
  }

  /** Of two equally tall ones. */
  private boolean dominates(Flight a, Flight b) {
    if (b.lowest() && !a.lowest()) {
      return false;
    }
    for (int i = 0; i < layers.length; i++) {
      if (a.layers()[i] > b.layers()[i]) {
        return false;
      }
    }
    return true;
  }

  private Flight flight(long heightNm, int pieces) {
    boolean lowest = false;
    long thinnestNm = Long.MAX_VALUE;
    long thinnestAloftNm = Long.MAX_VALUE;
    for (Kind kind : kinds) {
      if (layers[kind.index()] > 0) {
        lowest |= kind.lowest();
        thinnestNm = Math.min(thinnestNm, kind.thicknessNm());
        if (!kind.lowest()) {
          thinnestAloftNm = Math.min(thinnestAloftNm, kind.thicknessNm());
        }
      }
    }
    return new Flight(layers.clone(), heightNm, pieces, lowest, thinnestNm, thinnestAloftNm);
  }

  /** Whether all were placed; false as soon as there are too many. */
  private boolean place(int from, long heightNm, int pieces) {
    if (heightNm > 0) {
      found.add(flight(heightNm, pieces));
    }
    for (int i = from; i < kinds.size() && found.size() <= MOST; i++) {
      Kind kind = kinds.get(i);
      boolean onBoard = (layers[kind.index()] + 1) * kind.abreast() <= counts[kind.index()];
      if (onBoard && heightNm + kind.thicknessNm() <= stepNm) {
        layers[kind.index()]++;
        place(i, heightNm + kind.thicknessNm(), pieces + kind.abreast());
        layers[kind.index()]--;
      }
    }
    return found.size() <= MOST;
  }
}
