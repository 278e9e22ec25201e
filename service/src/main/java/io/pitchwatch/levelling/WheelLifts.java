package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.JackPair;
import java.util.List;

/** How high the wheels stand on their stacks, and what that does to jacks, tyres and springs. */
final class WheelLifts {

  private final Stance stance;
  private final double[] leftMm;
  private final double[] rightMm;

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
  }

  /** The lifts of what stands under the wheels of a coach. */
  WheelLifts(Coach coach, List<WheelStack> wheels) {
    this(new Stance(coach), new double[coach.axles().size()], new double[coach.axles().size()]);
    List<Axle> axles = coach.axles();
    for (WheelStack wheel : wheels) {
      for (int k = 0; k < axles.size(); k++) {
        if (axles.get(k).id().equals(wheel.axle())) {
          (wheel.side() == Direction.LEFT ? leftMm : rightMm)[k] = wheel.liftMm();
        }
      }
    }
  }

  /**
   * How far each foot of a pair is from the ground, millimetres: clearance + h(x)·(1/2 ±
   * spacing/(2·track)), + on the side that stands on blocks, h(x) and the track linear along the
   * coach between the axles.
   */
  Sides gapMm(JackPair pair) {
    double left = along(pair.positionMm(), leftMm);
    double right = along(pair.positionMm(), rightMm);
    double reach = pair.spacingMm() / (2 * along(pair.positionMm(), stance.trackMm));
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
    double bodyMm = pair.clearanceMm() + stance.rest(meanMm()).atMm(pair.positionMm());
    double rightUp = Math.tan(stance.lift(leftMm, rightMm).rollRad()) * pair.spacingMm() / 2;
    return new Sides(
        Math.max(0, bodyMm - rightUp - gap.left()), Math.max(0, bodyMm + rightUp - gap.right()));
  }

  /**
   * How much further the body is from one tyre of each axle than on the bare ground, millimetres:
   * the axles are turned and lifted by different amounts, the body by what their springs make of
   * it.
   */
  double[] unevenMm() {
    double body = stance.lift(leftMm, rightMm).rollRad();
    double[] uneven = stance.sagMm(meanMm());
    for (int k = 0; k < uneven.length; k++) {
      double turn = stance.turnRad(k, leftMm[k], rightMm[k]);
      uneven[k] += Math.tan(Math.abs(turn - body)) * stance.trackMm[k] / 2;
    }
    return uneven;
  }

  /** What the springs of three axles add to the pitch that follows from the outer two, radians. */
  double sharedPitchRad() {
    double outer = stance.lift(leftMm, rightMm).pitchRad();
    return outer - Math.atan(stance.rest(meanMm()).slope());
  }

  private double[] meanMm() {
    double[] meanMm = new double[leftMm.length];
    for (int k = 0; k < meanMm.length; k++) {
      meanMm[k] = (leftMm[k] + rightMm[k]) / 2;
    }
    return meanMm;
  }

  /** A figure of the axles, linear between them and beyond. */
  private double along(double xMm, double[] figures) {
    double[] weights = stance.weights(xMm);
    double sum = 0;
    for (int k = 0; k < figures.length; k++) {
      sum += weights[k] * figures[k];
    }
    return sum;
  }
}
