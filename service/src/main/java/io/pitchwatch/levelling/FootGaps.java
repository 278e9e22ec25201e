package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.JackPair;
import java.util.List;

/**
 * How far the feet of the jacks are from the ground once the wheels stand on their stacks: gap =
 * clearance + h(x)·(1/2 ± spacing/(2·track)), + on the side that stands on blocks, h(x) and the
 * track linear along the coach between the axles.
 */
final class FootGaps {

  private final Stance stance;
  private final double[] leftMm;
  private final double[] rightMm;

  FootGaps(Coach coach, List<WheelStack> wheels) {
    List<Axle> axles = coach.axles();
    stance = new Stance(coach);
    leftMm = new double[axles.size()];
    rightMm = new double[axles.size()];
    for (WheelStack wheel : wheels) {
      for (int k = 0; k < axles.size(); k++) {
        if (axles.get(k).id().equals(wheel.axle())) {
          (wheel.side() == Direction.LEFT ? leftMm : rightMm)[k] = wheel.liftMm();
        }
      }
    }
  }

  /** The gap under each foot of a pair, millimetres. */
  Sides of(JackPair pair) {
    double left = along(pair.positionMm(), leftMm);
    double right = along(pair.positionMm(), rightMm);
    double reach = pair.spacingMm() / (2 * along(pair.positionMm(), stance.trackMm));
    return new Sides(
        pair.clearanceMm() + left * (0.5 + reach) + right * (0.5 - reach),
        pair.clearanceMm() + left * (0.5 - reach) + right * (0.5 + reach));
  }

  /**
   * How much further the body is from one tyre of each axle than from the axle's middle, because
   * the axles are turned by different amounts and the body by their mean, millimetres.
   */
  double[] unevenMm() {
    double body = stance.lift(leftMm, rightMm).rollRad();
    double[] uneven = new double[leftMm.length];
    for (int k = 0; k < uneven.length; k++) {
      double turn = stance.turnRad(k, leftMm[k], rightMm[k]);
      uneven[k] = Math.tan(Math.abs(turn - body)) * stance.trackMm[k] / 2;
    }
    return uneven;
  }

  /** A figure of the axles, linear between them and beyond. */
  private double along(double xMm, double[] figures) {
    int k = 0;
    while (k < figures.length - 2 && xMm < stance.xMm[k + 1]) {
      k++;
    }
    if (figures.length == 1) {
      return figures[0];
    }
    double fromMm = stance.xMm[k];
    double share = (xMm - fromMm) / (stance.xMm[k + 1] - fromMm);
    return figures[k] + share * (figures[k + 1] - figures[k]);
  }
}
