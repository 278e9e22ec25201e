package io.pitchwatch.coach;

import java.util.List;
import java.util.Optional;

/**
 * The coach as its owner described it.
 *
 * @param id the owner's name for it, also its device id on the network
 * @param units units of text for people
 * @param axles front to back, at least one
 * @param jackPairs front to back; empty when there are none
 * @param pieces what is carried to go under tyres
 * @param pads what goes under jacks
 * @param levelling what the owner allows, and how level is level enough
 * @param fridges absorption fridges
 * @param doors interior doors
 */
public record Coach(
    String id,
    Units units,
    List<Axle> axles,
    List<JackPair> jackPairs,
    List<Piece> pieces,
    List<Pad> pads,
    Levelling levelling,
    List<Fridge> fridges,
    List<Door> doors) {

  /** Checks the id and that there is an axle; copies the lists. */
  public Coach {
    Require.id(id);
    if (axles.isEmpty()) {
      throw new IllegalArgumentException("axles is empty; a coach has at least one");
    }
    axles = List.copyOf(axles);
    jackPairs = List.copyOf(jackPairs);
    pieces = List.copyOf(pieces);
    pads = List.copyOf(pads);
    fridges = List.copyOf(fridges);
    doors = List.copyOf(doors);
  }

  /** The same with other pieces. */
  public Coach withPieces(List<Piece> others) {
    return new Coach(id, units, axles, jackPairs, others, pads, levelling, fridges, doors);
  }

  /** The same with other pads. */
  public Coach withPads(List<Pad> others) {
    return new Coach(id, units, axles, jackPairs, pieces, others, levelling, fridges, doors);
  }

  /** The same with other jacks. */
  public Coach withJackPairs(List<JackPair> others) {
    return new Coach(id, units, axles, others, pieces, pads, levelling, fridges, doors);
  }

  /** The axle of an id. */
  public Optional<Axle> axle(String axleId) {
    return axles.stream().filter(axle -> axle.id().equals(axleId)).findFirst();
  }

  /** The kind of piece of an id. */
  public Optional<Piece> piece(String pieceId) {
    return pieces.stream().filter(piece -> piece.id().equals(pieceId)).findFirst();
  }
}
