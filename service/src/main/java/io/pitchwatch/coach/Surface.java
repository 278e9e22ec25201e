package io.pitchwatch.coach;

/** What the coach stands on. */
public enum Surface {
  CONCRETE,
  ASPHALT,
  GRAVEL,
  GRASS,
  SOFT
}
