package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Writes a stack out, layer by layer from the ground up, with its stair.
 *
 * <p>Inside one flight the order is free but for the lowest layer of all, which is the widest of
 * those that may lie there; blocks come before boards before sheets, thick before thin, so that the
 * tyre stands on the smoothest.
 */
final class Layers {

  private final Axle axle;
  private final List<Piece> pieces;
  private final IntPredicate lowest;

  /**
   * Stacks under the stations of an axle.
   *
   * @param axle carried
   * @param pieces of the coach
   * @param lowest which of them, by index, may be the lowest layer
   */
  Layers(Axle axle, List<Piece> pieces, IntPredicate lowest) {
    this.axle = axle;
    this.pieces = pieces;
    this.lowest = lowest;
  }

  /** The stack under one station. */
  WheelStack write(Stack stack, Direction side) {
    List<Layer> layers = new ArrayList<>();
    List<List<Layer>> stair = new ArrayList<>();
    for (Stack part = stack; part != null && part.lowest() != null; part = part.above()) {
      if (!layers.isEmpty()) {
        stair.add(List.copyOf(layers));
      }
      for (int index : order(part.lowest().layers(), layers.isEmpty())) {
        layers.add(new Layer(pieces.get(index).id(), Kind.abreast(pieces.get(index), axle)));
      }
    }
    return new WheelStack(axle.id(), side, stack.heightMm(), layers, stair);
  }

  /** The layers of one flight, from the ground up, by the index of their kind. */
  private List<Integer> order(int[] layers, boolean onTheGround) {
    Comparator<Integer> order =
        Comparator.<Integer, PieceKind>comparing(i -> pieces.get(i).kind())
            .thenComparing(i -> -pieces.get(i).thicknessMm())
            .thenComparing(i -> i);
    int first =
        IntStream.range(0, layers.length)
            .filter(i -> onTheGround && layers[i] > 0 && lowest.test(i))
            .boxed()
            .max(
                Comparator.comparingDouble(i -> pieces.get(i).widthMm() * pieces.get(i).lengthMm()))
            .orElse(Barrier.NONE);
    List<Integer> ordered = new ArrayList<>();
    IntStream.range(0, layers.length)
        .boxed()
        .sorted(Comparator.<Integer, Boolean>comparing(i -> i != first).thenComparing(order))
        .forEach(i -> IntStream.range(0, layers[i]).forEach(n -> ordered.add(i)));
    return ordered;
  }
}
