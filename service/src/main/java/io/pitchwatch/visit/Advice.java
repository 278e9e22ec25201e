package io.pitchwatch.visit;

import java.util.Optional;

/**
 * What the driver is told.
 *
 * @param planned the plan; empty while there is none, as long as the lean is not known well enough
 * @param next what to do now, one sentence; empty while there is nothing to say
 */
public record Advice(Optional<Planned> planned, String next) {

  /** Nothing is known, or nothing is asked. */
  public static final Advice NONE = new Advice(Optional.empty(), "");
}
