package io.pitchwatch.coach;

/**
 * One kind of piece that is carried to go under tyres.
 *
 * @param id the owner's name for it
 * @param kind block, board or sheet
 * @param thicknessMm millimetres
 * @param lengthMm along the coach when laid, millimetres
 * @param widthMm across the coach when laid, millimetres
 * @param count how many are on board
 * @param maxLoadKg rated load of one piece, kilograms; infinite where the owner gave none
 */
public record Piece(
    String id,
    PieceKind kind,
    double thicknessMm,
    double lengthMm,
    double widthMm,
    int count,
    double maxLoadKg) {

  /** Checks every figure. */
  public Piece {
    Require.id(id);
    Require.positive("thickness", thicknessMm);
    Require.positive("length", lengthMm);
    Require.positive("width", widthMm);
    Require.count("count", count);
    if (!(maxLoadKg > 0)) {
      throw new IllegalArgumentException("max-load is " + maxLoadKg + "; it must be more than 0");
    }
  }
}
