package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.levelling.Stance;
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
  private final Stance stance;
  private @Nullable Lean held;
  private boolean firm;

  BareLean(Coach coach) {
    this.coach = coach;
    this.stance = new Stance(coach);
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

  /** How what is laid turns the body. */
  Lean lift(Laid laid) {
    double[] leftMm = new double[coach.axles().size()];
    double[] rightMm = new double[leftMm.length];
    for (int k = 0; k < leftMm.length; k++) {
      leftMm[k] = heightMm(laid, coach.axles().get(k), Direction.LEFT);
      rightMm[k] = heightMm(laid, coach.axles().get(k), Direction.RIGHT);
    }
    return stance.lift(leftMm, rightMm);
  }

  private double heightMm(Laid laid, Axle axle, Direction side) {
    double heightMm = 0;
    for (Laid.Wheel wheel : laid.wheels()) {
      if (wheel.axle().equals(axle.id()) && wheel.side() == side) {
        for (Layer layer : wheel.layers()) {
          // A piece that is not on board any more lifts nothing.
          heightMm += coach.piece(layer.piece()).map(Piece::thicknessMm).orElse(0.0);
        }
      }
    }
    return heightMm;
  }
}
