package io.pitchwatch.visit;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.floor.FloorState;

/** What can happen to a visit. */
public sealed interface VisitEvent {

  /** The floor was read; an unknown floor changes nothing. */
  record FloorRead(FloorState state) implements VisitEvent {}

  /** The owner says how long the coach is to stand here. */
  record StaySet(Stay stay) implements VisitEvent {}

  /** The owner says what the coach stands on. */
  record SurfaceSet(Surface surface) implements VisitEvent {}

  /** The owner says what lies under the tyres now. */
  record LaidSet(Laid laid) implements VisitEvent {}
}
