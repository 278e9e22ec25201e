package io.pitchwatch.levelling;

import java.util.List;

/**
 * What one pair of jacks does.
 *
 * @param pair id of the pair
 * @param order when its turn is, from 1
 * @param raiseMm how far it goes past contact, millimetres
 * @param padMm what lies under its feet, millimetres
 * @param travelMm how far each jack runs out in all, millimetres
 * @param leftPads the pads under the left foot
 * @param rightPads the pads under the right foot
 */
public record JackMove(
    String pair,
    int order,
    double raiseMm,
    Sides padMm,
    Sides travelMm,
    List<PadPile> leftPads,
    List<PadPile> rightPads) {

  /** Copies the lists. */
  public JackMove {
    leftPads = List.copyOf(leftPads);
    rightPads = List.copyOf(rightPads);
  }
}
