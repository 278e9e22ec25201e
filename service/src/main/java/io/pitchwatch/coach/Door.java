package io.pitchwatch.coach;

/**
 * An interior door on a hinge line square to the floor.
 *
 * @param id the owner's name for it
 * @param shutTowards the way the shut leaf points, seen from its hinge line
 * @param opensTowards the way it points when open by a right angle, square to the other
 * @param swingRad from shut to its stop, radians
 * @param holdsRad lean at which the leaf just starts to move by itself, radians
 * @param widthMm width of the leaf, millimetres
 */
public record Door(
    String id,
    Direction shutTowards,
    Direction opensTowards,
    double swingRad,
    double holdsRad,
    double widthMm) {

  /** Checks every figure. */
  public Door {
    Require.id(id);
    if (shutTowards.x() * opensTowards.x() + shutTowards.y() * opensTowards.y() != 0) {
      throw new IllegalArgumentException(
          "opens-towards is " + opensTowards + "; it must be square to " + shutTowards);
    }
    Require.positive("swing", swingRad);
    Require.notNegative("holds", holdsRad);
    Require.positive("width", widthMm);
  }
}
