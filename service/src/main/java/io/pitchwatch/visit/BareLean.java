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
 * <p>Known once the coach stands and the lean's standard error is small beside the tolerance of the
 * stay, and taken again when the floor is steady. From then on it is held: a new reading counts
 * only after the coach has moved with nothing under it. A lean that is held gives way only to one
 * that differs by more than is stated of it. What both share, such as the zero's error, does not
 * count. A coach that stands on pieces when it is first read has their lift reckoned back.
 */
final class BareLean {

  /** Less than any piece makes: our own figure. */
  private static final double FINE_RAD = Math.toRadians(0.1);

  /** Share of a stay's tolerance that does not matter: our own figure. */
  private static final double FINE_SHARE = 0.25;

  private final Coach coach;
  private final Stance stance;
  private @Nullable Lean held;
  private boolean firm;

  BareLean(Coach coach) {
    this.coach = coach;
    this.stance = new Stance(coach);
  }

  /** Takes a reading; returns the lean on the bare ground if it is known. */
  Optional<Lean> read(FloorReading floor, VisitState state) {
    if (state.phase() == Phase.UNDER_WAY) {
      forget();
    } else if (floor.state() == FloorState.MOVING
        && state.laid().pieces() == 0
        && state.phase() != Phase.PARKED) {
      firm = false;
    } else if (floor.isAtRest() && !firm) {
      take(floor, state);
    }
    return Optional.ofNullable(held);
  }

  /** Nothing of before counts any more. */
  void forget() {
    held = null;
    firm = false;
  }

  private void take(FloorReading floor, VisitState state) {
    double toleranceRad = coach.levelling().toleranceRad(state.stay());
    double fineRad = Math.min(FINE_RAD, FINE_SHARE * toleranceRad);
    boolean steady = floor.state() == FloorState.STEADY;
    if (!steady && !(floor.randomRad() <= fineRad)) {
      return;
    }
    // The mean since the stop; the live figure still swings with the springs.
    Lean bare = reckonBack(floor.steady(), state.laid());
    Lean before = held;
    if (before == null
        || bare.minus(before).largestRad() > Math.max(fineRad, 2 * floor.randomRad())) {
      held = bare;
    }
    firm = steady;
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
