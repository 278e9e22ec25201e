package io.pitchwatch.visit;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;

/**
 * Where the coach is in its visit to a site, and what the owner said of it.
 *
 * @param phase where the coach is in its stay
 * @param stay kind of stay
 * @param surface what the coach stands on
 * @param laid what lies under the tyres
 * @param moving whether the last known floor was moving
 * @param sinceNanos monotonic time since when it has been moving, or at rest
 */
public record VisitState(
    Phase phase, Stay stay, Surface surface, Laid laid, boolean moving, long sinceNanos) {

  /** A visit about which nothing is known yet: arriving, for a stay, on grass. */
  public static VisitState atStart(long nowNanos) {
    return new VisitState(Phase.ARRIVING, Stay.STAY, Surface.GRASS, Laid.NOTHING, false, nowNanos);
  }

  VisitState with(Phase next) {
    return new VisitState(next, stay, surface, laid, moving, sinceNanos);
  }

  VisitState with(Stay next) {
    return new VisitState(phase, next, surface, laid, moving, sinceNanos);
  }

  VisitState with(Surface next) {
    return new VisitState(phase, stay, next, laid, moving, sinceNanos);
  }

  VisitState with(Laid next) {
    return new VisitState(phase, stay, surface, next, moving, sinceNanos);
  }

  VisitState movingIs(boolean now, long nowNanos) {
    return new VisitState(phase, stay, surface, laid, now, nowNanos);
  }
}
