package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Flights.Flight;
import org.jspecify.annotations.Nullable;

/**
 * A stack under one station, or the upper part of one, with its stair.
 *
 * <p>A stair cuts the stack into flights, each at most one step tall. A layer of the lowest of n
 * flights lies in the stack and in each of the n − 1 prefixes that are the stair, so it is used n
 * times; a layer of the topmost flight, once.
 *
 * @param heightNm nanometres
 * @param use pieces by kind, stairs included, packed
 * @param pieces in all
 * @param roomNm what is free below one step in the least filled of its flights
 * @param lowest its lowest flight; null for no stack at all
 * @param above what stands on that flight; null for nothing
 */
@SuppressWarnings("ArrayRecordComponent") // Millions are compared; nobody writes to it.
record Stack(
    long heightNm,
    long[] use,
    int pieces,
    long roomNm,
    @Nullable Flight lowest,
    @Nullable Stack above) {

  double heightMm() {
    return heightNm / Kind.NM_PER_MM;
  }
}
