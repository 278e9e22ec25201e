package io.pitchwatch.visit;

import io.pitchwatch.coach.Direction;
import java.util.List;

/**
 * What lies under the tyres, as it was set by whoever laid it.
 *
 * @param wheels one for each wheel station that stands on something
 */
public record Laid(List<Wheel> wheels) {

  /** Nothing lies under the coach. */
  public static final Laid NOTHING = new Laid(List.of());

  /** Pieces in all, stairs included. */
  public int pieces() {
    int pieces = 0;
    for (Wheel wheel : wheels) {
      pieces += count(wheel.layers());
      for (List<Layer> step : wheel.stair()) {
        pieces += count(step);
      }
    }
    return pieces;
  }

  private static int count(List<Layer> layers) {
    return layers.stream().mapToInt(Layer::abreast).sum();
  }

  /** Copies the list. */
  public Laid {
    wheels = List.copyOf(wheels);
  }

  /**
   * One wheel station.
   *
   * @param axle id of the axle
   * @param side left or right
   * @param layers from the ground up
   * @param stair the shorter stacks in front of it, lowest first; each from the ground up
   */
  public record Wheel(String axle, Direction side, List<Layer> layers, List<List<Layer>> stair) {

    /**
     * Checks the side; copies the lists.
     *
     * @throws IllegalArgumentException if the side is neither left nor right
     */
    public Wheel {
      if (side.y() == 0) {
        throw new IllegalArgumentException("side is " + side + "; it must be LEFT or RIGHT");
      }
      layers = List.copyOf(layers);
      stair = stair.stream().map(List::copyOf).toList();
    }
  }

  /**
   * One layer: pieces of one kind side by side.
   *
   * @param piece id of the kind of piece
   * @param abreast how many lie side by side, at least one
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
  }
}
