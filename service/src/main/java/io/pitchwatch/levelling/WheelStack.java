package io.pitchwatch.levelling;

import io.pitchwatch.coach.Direction;
import java.util.List;

/**
 * What goes under one wheel station.
 *
 * @param axle id of the axle
 * @param side left or right
 * @param liftMm height of the stack, millimetres
 * @param layers from the ground up
 * @param stair the shorter stacks in front of it, lowest first, each from the ground up: prefixes
 *     of the stack itself
 */
public record WheelStack(
    String axle, Direction side, double liftMm, List<Layer> layers, List<List<Layer>> stair) {

  /** Copies the lists. */
  public WheelStack {
    layers = List.copyOf(layers);
    stair = stair.stream().map(List::copyOf).toList();
  }

  /** Pieces in all, stairs included. */
  public int pieces() {
    int pieces = Layer.pieces(layers);
    for (List<Layer> step : stair) {
      pieces += Layer.pieces(step);
    }
    return pieces;
  }

  /** Pieces of one kind, stairs included. */
  public int piecesOf(String kind) {
    int pieces = count(layers, kind);
    for (List<Layer> step : stair) {
      pieces += count(step, kind);
    }
    return pieces;
  }

  private static int count(List<Layer> layers, String kind) {
    return layers.stream().filter(l -> l.piece().equals(kind)).mapToInt(Layer::abreast).sum();
  }
}
