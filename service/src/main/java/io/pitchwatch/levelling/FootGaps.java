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

  private final List<Axle> axles;
  private final double[] leftMm;
  private final double[] rightMm;

  FootGaps(Coach coach, List<WheelStack> wheels) {
    axles = coach.axles();
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
    double[] tracks = axles.stream().mapToDouble(Axle::trackMm).toArray();
    double reach = pair.spacingMm() / (2 * along(pair.positionMm(), tracks));
    return new Sides(
        pair.clearanceMm() + left * (0.5 + reach) + right * (0.5 - reach),
        pair.clearanceMm() + left * (0.5 - reach) + right * (0.5 + reach));
  }

  /**
   * How much further the body is from one tyre of each axle than from the axle's middle, because
   * the axles are turned by different amounts and the body by their mean, millimetres.
   */
  double[] unevenMm() {
    double stiffness = axles.stream().mapToDouble(Axle::stiffness).sum();
    double body = 0;
    for (int k = 0; k < leftMm.length; k++) {
      body += axles.get(k).stiffness() / stiffness * turnRad(k);
    }
    double[] uneven = new double[leftMm.length];
    for (int k = 0; k < uneven.length; k++) {
      uneven[k] = Math.tan(Math.abs(turnRad(k) - body)) * axles.get(k).trackMm() / 2;
    }
    return uneven;
  }

  private double turnRad(int k) {
    return Math.atan((rightMm[k] - leftMm[k]) / axles.get(k).trackMm());
  }

  /** A figure of the axles, linear between them and beyond. */
  private double along(double xMm, double[] figures) {
    int k = 0;
    while (k < figures.length - 2 && xMm < axles.get(k + 1).positionMm()) {
      k++;
    }
    if (figures.length == 1) {
      return figures[0];
    }
    double fromMm = axles.get(k).positionMm();
    double share = (xMm - fromMm) / (axles.get(k + 1).positionMm() - fromMm);
    return figures[k] + share * (figures[k + 1] - figures[k]);
  }
}
