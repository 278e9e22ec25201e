package io.pitchwatch.coach;

/**
 * One kind of pad that goes under jacks, stackable.
 *
 * @param id the owner's name for it
 * @param thicknessMm millimetres
 * @param lengthMm millimetres
 * @param widthMm millimetres
 * @param count how many are on board
 */
public record Pad(String id, double thicknessMm, double lengthMm, double widthMm, int count) {

  /** Checks every figure. */
  public Pad {
    Require.id(id);
    Require.positive("thickness", thicknessMm);
    Require.positive("length", lengthMm);
    Require.positive("width", widthMm);
    Require.count("count", count);
  }
}
