package io.pitchwatch.levelling;

import java.util.List;

/**
 * One layer of a stack: pieces of one kind side by side.
 *
 * @param piece id of the kind of piece
 * @param abreast how many lie side by side across the coach, at least one
 */
public record Layer(String piece, int abreast) {

  /**
   * Checks the count.
   *
   * @throws IllegalArgumentException if abreast is less than 1
   */
  public Layer {
    if (abreast < 1) {
      throw new IllegalArgumentException("abreast is " + abreast + "; it must be 1 or more");
    }
  }

  /** Pieces of all kinds in some layers. */
  public static int pieces(List<Layer> layers) {
    return layers.stream().mapToInt(Layer::abreast).sum();
  }
}
