package io.pitchwatch.visit;

import io.pitchwatch.coach.Direction;
import io.pitchwatch.levelling.Layer;
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
      pieces += Layer.pieces(wheel.layers());
      for (List<Layer> step : wheel.stair()) {
        pieces += Layer.pieces(step);
      }
    }
    return pieces;
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
}
