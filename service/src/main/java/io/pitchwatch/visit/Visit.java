package io.pitchwatch.visit;

import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.VisitEvent.FloorRead;
import io.pitchwatch.visit.VisitEvent.LaidSet;
import io.pitchwatch.visit.VisitEvent.StaySet;
import io.pitchwatch.visit.VisitEvent.SurfaceSet;

/**
 * The visit to a site as a state machine: (state, event, now) → state.
 *
 * <pre>
 *   under-way ──rest 3 s──► arriving ──rest 10 min──► parked
 *       ▲                    │   ▲                      │
 *       └──motion 30 s───────┘   └──rest 60 s── leaving ◄─motion 15 s
 *       └──motion 30 s──────────────────────────┘
 * </pre>
 *
 * <p>The times are our own figures: a coach creeps onto blocks in less than half a minute, waits at
 * a light for more than three seconds without harm (it is under way again soon after), and strong
 * wind, rocking a simulated coach by 0.12 deg for six hours, was taken for motion for 11 s at most.
 */
public final class Visit {

  private static final long SECOND_NANOS = 1_000_000_000L;

  /** Rest after which a coach under way is taken to arrive. */
  static final long ARRIVING_REST_NANOS = 3 * SECOND_NANOS;

  /** Rest after which an arriving coach is taken to be parked. */
  static final long PARKED_REST_NANOS = 600 * SECOND_NANOS;

  /** Rest after which a leaving coach is taken to arrive again. */
  static final long AGAIN_REST_NANOS = 60 * SECOND_NANOS;

  /** Motion after which a parked coach is taken to leave. */
  static final long LEAVING_MOTION_NANOS = 15 * SECOND_NANOS;

  /** Motion after which any coach is taken to be under way. */
  static final long UNDER_WAY_MOTION_NANOS = 30 * SECOND_NANOS;

  private Visit() {}

  /**
   * The state after an event; the same object when nothing changed.
   *
   * @param nowNanos monotonic time of the event, not before that of the one before
   */
  public static VisitState on(VisitState state, VisitEvent event, long nowNanos) {
    if (event instanceof FloorRead read) {
      return onFloor(state, read.state(), nowNanos);
    }
    if (event instanceof StaySet set) {
      return set.stay() == state.stay() ? state : state.with(set.stay());
    }
    if (event instanceof SurfaceSet set) {
      return set.surface() == state.surface() ? state : state.with(set.surface());
    }
    LaidSet set = (LaidSet) event;
    return set.laid().equals(state.laid()) ? state : state.with(set.laid());
  }

  private static VisitState onFloor(VisitState state, FloorState floor, long nowNanos) {
    if (floor == FloorState.UNKNOWN) {
      return state;
    }
    boolean moving = floor == FloorState.MOVING;
    VisitState now = moving == state.moving() ? state : state.movingIs(moving, nowNanos);
    long lastedNanos = nowNanos - now.sinceNanos();
    Phase next =
        moving ? afterMotion(now.phase(), lastedNanos) : afterRest(now.phase(), lastedNanos);
    return next == now.phase() ? now : now.with(next);
  }

  private static Phase afterMotion(Phase phase, long lastedNanos) {
    if (lastedNanos >= UNDER_WAY_MOTION_NANOS) {
      return Phase.UNDER_WAY;
    }
    boolean leaves = phase == Phase.PARKED && lastedNanos >= LEAVING_MOTION_NANOS;
    return leaves ? Phase.LEAVING : phase;
  }

  private static Phase afterRest(Phase phase, long lastedNanos) {
    return switch (phase) {
      case UNDER_WAY -> lastedNanos >= ARRIVING_REST_NANOS ? Phase.ARRIVING : phase;
      case LEAVING -> lastedNanos >= AGAIN_REST_NANOS ? Phase.ARRIVING : phase;
      case ARRIVING -> lastedNanos >= PARKED_REST_NANOS ? Phase.PARKED : phase;
      case PARKED -> phase;
    };
  }
}
