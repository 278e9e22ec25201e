package io.pitchwatch.visit;

/** Where the coach is in its stay at a site. */
public enum Phase {
  UNDER_WAY,
  ARRIVING,
  PARKED,
  LEAVING
}
