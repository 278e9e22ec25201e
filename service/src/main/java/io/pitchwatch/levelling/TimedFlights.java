package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Flights.Flight;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * The flights that there are enough pieces for to use them so many times over, and which of them
 * may go under an upper part of one flight less.
 */
final class TimedFlights {

  /** More than any flight is tall. */
  private static final double PIECE_NM = 1e12;

  private final List<Flight> flights;
  private final double[] ranks;
  private final long[][] use;
  private final boolean anyOnGround;

  /** Thinnest layers that may not move up, nanometres, descending. */
  private final long[] thinnestNm;

  private final Fitting fitting;
  private final int[] limits;

  /**
   * Flights, used so many times.
   *
   * @param all by pieces, and those of as many by height
   * @param times how often each is used
   * @param abreast how many of a kind make a layer, by kind
   * @param counts pieces on board, by kind
   * @param anyOnGround whether every kind may lie on the ground
   */
  TimedFlights(List<Flight> all, int times, int[] abreast, int[] counts, boolean anyOnGround) {
    this.flights = all.stream().filter(f -> f.isThere(times, abreast, counts)).toList();
    this.anyOnGround = anyOnGround;
    ranks = flights.stream().mapToDouble(f -> rank(f.pieces(), f.heightNm())).toArray();
    use = flights.stream().map(f -> f.use(times, abreast)).toArray(long[][]::new);
    thinnestNm =
        flights.stream()
            .map(this::thinnestNm)
            .distinct()
            .sorted((a, b) -> Long.compare(b, a))
            .mapToLong(Long::longValue)
            .toArray();
    int kinds = Inventory.kinds(Inventory.pack(counts));
    limits = new int[kinds + 1];
    int[] most = Arrays.copyOf(counts, kinds + 1);
    most[kinds] = thinnestNm.length;
    fitting = new Fitting(most);
    int[] values = new int[kinds + 1];
    for (int f = 0; f < use.length; f++) {
      Inventory.unpack(use[f], values);
      values[kinds] = thicker(thinnestNm(flights.get(f)));
      fitting.add(values);
    }
  }

  /**
   * The thinnest layer of a flight, without those that stay where they are to lie on the ground.
   */
  private long thinnestNm(Flight flight) {
    return flight.lowest() && !anyOnGround ? flight.thinnestAloftNm() : flight.thinnestNm();
  }

  /** How many different thinnest layers are thicker. */
  private int thicker(long thanNm) {
    int n = 0;
    while (n < thinnestNm.length && thinnestNm[n] > thanNm) {
      n++;
    }
    return n;
  }

  /** Words of eight bytes that it takes in memory. */
  int words() {
    return use.length * (8 + (use.length == 0 ? 0 : use[0].length)) + fitting.words();
  }

  Flight get(int flight) {
    return flights.get(flight);
  }

  /** What all of one flight take, packed. */
  long[] use(int flight) {
    return use[flight];
  }

  /**
   * Visits the flights of so many pieces each that may go under an upper part: there are pieces for
   * them, they are not too tall, and none of their layers would fit into a flight of that part.
   *
   * @param pieces of one flight
   * @param left pieces that the upper part leaves, packed
   * @param roomNm what is free in the least filled flight of that part
   * @param mostNm how tall a flight may be
   * @param visit takes each
   */
  void visit(int pieces, long[] left, long roomNm, long mostNm, IntConsumer visit) {
    int from = Sorted.from(ranks, rank(pieces, 0));
    int to = Sorted.from(ranks, rank(pieces, mostNm + 1));
    if (from < to) {
      Inventory.unpack(left, limits);
      limits[limits.length - 1] = thicker(roomNm) - 1;
      fitting.visit(
          limits,
          from,
          to,
          f -> {
            visit.accept(f);
            return true;
          });
    }
  }

  /** Ascends as the flights do: in their pieces, then in their heights. */
  private static double rank(int pieces, long heightNm) {
    return pieces * PIECE_NM + heightNm;
  }
}
