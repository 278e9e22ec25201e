package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.JackPair;
import java.util.Arrays;
import java.util.List;

/** How high the wheels stand on their stacks, and what that does to jacks, tyres and springs. */
final class WheelLifts {

  private final Stance stance;
  private final double[] leftMm;
  private final double[] rightMm;
  private final double[] meanMm;
  private final Stance.Rest rest;

  /** How the body turns by them. */
  private final Lean turn;

  /**
   * Lifts of the wheels.
   *
   * @param leftMm of the left station of each axle
   * @param rightMm of the right one
   */
  WheelLifts(Stance stance, double[] leftMm, double[] rightMm) {
    this.stance = stance;
    this.leftMm = leftMm;
    this.rightMm = rightMm;
    meanMm = new double[leftMm.length];
    Arrays.setAll(meanMm, k -> (leftMm[k] + rightMm[k]) / 2);
    rest = stance.rest(meanMm);
    turn = stance.lift(leftMm, rightMm);
  }

  /** The lifts of what stands under the wheels of a coach. */
  static WheelLifts of(Coach coach, List<WheelStack> wheels) {
    List<Axle> axles = coach.axles();
    double[] leftMm = new double[axles.size()];
    double[] rightMm = new double[axles.size()];
    for (WheelStack wheel : wheels) {
      for (int k = 0; k < axles.size(); k++) {
        if (axles.get(k).id().equals(wheel.axle())) {
          (wheel.side() == Direction.LEFT ? leftMm : rightMm)[k] = wheel.liftMm();
        }
      }
    }
    return new WheelLifts(new Stance(coach), leftMm, rightMm);
  }

  /**
   * How far each foot of a pair is from the ground, millimetres: clearance + h(x)·(1/2 ±
   * spacing/(2·track)), + on the side that stands on blocks, h(x) and the track linear along the
   * coach between the axles.
   */
  Sides gapMm(JackPair pair) {
    double left = stance.along(pair.positionMm(), leftMm);
    double right = stance.along(pair.positionMm(), rightMm);
    double reach = stance.reach(pair);
    return new Sides(
        pair.clearanceMm() + left * (0.5 + reach) + right * (0.5 - reach),
        pair.clearanceMm() + left * (0.5 - reach) + right * (0.5 + reach));
  }

  /**
   * How much further than that the ground may be from each foot, millimetres, 0 or more: the body
   * is a straight line also over three axles that are not, and the feet lean with it.
   */
  Sides besidesMm(JackPair pair) {
    if (leftMm.length < 3) {
      return new Sides(0, 0);
    }
    Sides gap = gapMm(pair);
    double bodyMm = pair.clearanceMm() + rest.atMm(pair.positionMm());
    double rightUp = Math.tan(turn.rollRad()) * pair.spacingMm() / 2;
    return new Sides(
        Math.max(0, bodyMm - rightUp - gap.left()), Math.max(0, bodyMm + rightUp - gap.right()));
  }

  /**
   * How much further the body is from one tyre of each axle than on the bare ground, millimetres:
   * the axles are turned and lifted by different amounts, the body by what their springs make of
   * it.
   */
  double[] unevenMm() {
    double[] uneven = new double[leftMm.length];
    for (int k = 0; k < uneven.length; k++) {
      double apartRad = stance.turnRad(k, leftMm[k], rightMm[k]) - turn.rollRad();
      uneven[k] =
          Math.tan(Math.abs(apartRad)) * stance.trackMm[k] / 2
              + rest.atMm(stance.xMm[k])
              - meanMm[k];
    }
    return uneven;
  }

  /** What the springs of three axles add to the pitch that follows from the outer two, radians. */
  double sharedPitchRad() {
    return turn.pitchRad() - Math.atan(rest.slope());
  }
}
