package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Piece;

/**
 * A kind of piece as it lies under one station of an axle.
 *
 * @param index its place among the coach's pieces
 * @param thicknessNm nanometres, so that sums of sixteenths of an inch are exact
 * @param abreast how many carry the station's footprint
 * @param lowest whether it may be the lowest layer
 */
record Kind(int index, long thicknessNm, int abreast, boolean lowest) {

  static final double NM_PER_MM = 1e6;

  /** How many pieces side by side carry the footprint of a station. */
  static int abreast(Piece piece, Axle axle) {
    return (int) Math.ceil(axle.footprintMm() / piece.widthMm() - 1e-9);
  }

  /** Whether the pieces abreast carry one station's load. */
  static boolean carries(Piece piece, Axle axle) {
    return axle.loadKg() / 2 / abreast(piece, axle) <= piece.maxLoadKg() * (1 + 1e-12);
  }

  private static long thicknessNm(Piece piece) {
    return Math.round(piece.thicknessMm() * NM_PER_MM);
  }

  /** Thickness to the nanometre, as stacks of it are measured, millimetres. */
  static double thicknessMm(Piece piece) {
    return thicknessNm(piece) / NM_PER_MM;
  }

  static Kind of(int index, Piece piece, Axle axle, boolean lowest) {
    return new Kind(index, thicknessNm(piece), abreast(piece, axle), lowest);
  }
}
