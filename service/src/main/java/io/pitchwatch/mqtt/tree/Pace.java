package io.pitchwatch.mqtt.tree;

/** How closely the values are watched. */
public enum Pace {
  /** On arrival, or while the floor is not at rest: someone acts on every step. */
  LIVE,
  /** Nobody looks for minutes. */
  PARKED,
  /** What there is to say is said now. */
  AT_ONCE
}
