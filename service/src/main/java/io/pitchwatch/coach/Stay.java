package io.pitchwatch.coach;

/** How long the coach is to stand here, which decides how level is level enough. */
public enum Stay {
  OVERNIGHT,
  STAY,
  SEASON
}
