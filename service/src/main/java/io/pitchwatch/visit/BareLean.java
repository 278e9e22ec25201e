package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.Laid.Layer;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How the floor would lean with the coach on the bare ground: that is what is planned for, so that
 * a plan stays the same while it is carried out.
 *
 * <p>Known from the first reading at rest after arriving, and better once the floor is steady. From
 * then on it is held: a new reading counts only after the coach has moved with nothing under it,
 * and only if it differs by more than a tenth of a degree (our own figure: less than any piece
 * makes). A coach that stands on pieces when it is first read has their lift reckoned back.
 */
final class BareLean {

  /** What a plan does not change for. */
  static final double HOLD_RAD = Math.toRadians(0.1);

  private final Coach coach;
  private @Nullable Lean held;
  private boolean firm;

  BareLean(Coach coach) {
    this.coach = coach;
  }

  /** Takes a reading; returns the lean on the bare ground if it is known. */
  Optional<Lean> read(FloorReading floor, Phase phase, Laid laid) {
    boolean atRest = floor.state() == FloorState.STEADY || floor.state() == FloorState.UNSETTLED;
    if (phase == Phase.UNDER_WAY) {
      held = null;
      firm = false;
    } else if (floor.state() == FloorState.MOVING && laid.pieces() == 0 && phase != Phase.PARKED) {
      firm = false;
    } else if (atRest && !firm) {
      Lean bare = reckonBack(floor.lean(), laid);
      Lean before = held;
      held = before == null || differs(before, bare) ? bare : before;
      firm = floor.state() == FloorState.STEADY;
    }
    return Optional.ofNullable(held);
  }

  private static boolean differs(Lean a, Lean b) {
    return Math.abs(a.rollRad() - b.rollRad()) > HOLD_RAD
        || Math.abs(a.pitchRad() - b.pitchRad()) > HOLD_RAD;
  }

  private Lean reckonBack(Lean lean, Laid laid) {
    Lean lift = lift(laid);
    return new Lean(lean.rollRad() + lift.rollRad(), lean.pitchRad() + lift.pitchRad());
  }

  /** How what is laid turns the body: roll by the shares of stiffness, pitch by the outer axles. */
  Lean lift(Laid laid) {
    double stiffness = coach.axles().stream().mapToDouble(Axle::stiffness).sum();
    double roll = 0;
    for (Axle axle : coach.axles()) {
      double liftMm = heightMm(laid, axle, Direction.RIGHT) - heightMm(laid, axle, Direction.LEFT);
      roll += axle.stiffness() / stiffness * Math.atan(liftMm / axle.trackMm());
    }
    Axle front = coach.axles().get(0);
    Axle rear = coach.axles().get(coach.axles().size() - 1);
    double baseMm = front.positionMm() - rear.positionMm();
    double pitch = baseMm > 0 ? Math.atan((meanMm(laid, front) - meanMm(laid, rear)) / baseMm) : 0;
    return new Lean(roll, pitch);
  }

  private double meanMm(Laid laid, Axle axle) {
    return (heightMm(laid, axle, Direction.LEFT) + heightMm(laid, axle, Direction.RIGHT)) / 2;
  }

  private double heightMm(Laid laid, Axle axle, Direction side) {
    double heightMm = 0;
    for (Laid.Wheel wheel : laid.wheels()) {
      if (wheel.axle().equals(axle.id()) && wheel.side() == side) {
        for (Layer layer : wheel.layers()) {
          heightMm += thicknessMm(layer.piece());
        }
      }
    }
    return heightMm;
  }

  /** A piece that is not on board any more lifts nothing. */
  private double thicknessMm(String id) {
    return coach.pieces().stream()
        .filter(piece -> piece.id().equals(id))
        .mapToDouble(Piece::thicknessMm)
        .findFirst()
        .orElse(0);
  }
}
