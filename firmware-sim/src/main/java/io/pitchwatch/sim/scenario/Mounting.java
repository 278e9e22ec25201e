package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Surroundings;
import io.pitchwatch.sim.world.CoachWorld;
import io.pitchwatch.sim.world.Seat;
import java.util.ArrayList;
import java.util.List;

/**
 * How a board is screwed to the coach: which way the chip's axes point, and how far off that they
 * really point.
 *
 * @param rows the chip's x, y and z axes, one after the other, each as forward, left, up
 */
record Mounting(List<Double> rows) {

  private static final double NANOS_PER_SECOND = 1e9;

  /** Checks that there are nine. */
  Mounting {
    rows = List.copyOf(rows);
    if (rows.size() != 9) {
      throw new IllegalArgumentException("rows has " + rows.size() + " figures; 9 are allowed");
    }
  }

  /**
   * A board that was turned a little after its axes were laid along the coach's.
   *
   * @param xTo where the chip's x points
   * @param zTo where its z points; square to x
   * @param offRad by how much it was then turned about forward, left and up, in this order, radians
   */
  static Mounting of(Direction xTo, Direction zTo, double[] offRad) {
    double[] x = xTo.vector();
    double[] z = zTo.vector();
    double[] y = {z[1] * x[2] - z[2] * x[1], z[2] * x[0] - z[0] * x[2], z[0] * x[1] - z[1] * x[0]};
    List<Double> rows = new ArrayList<>();
    for (double[] axis : new double[][] {x, y, z}) {
      double[] turned = axis.clone();
      turn(turned, 1, 2, offRad[0]);
      turn(turned, 2, 0, offRad[1]);
      turn(turned, 0, 1, offRad[2]);
      for (double component : turned) {
        rows.add(component);
      }
    }
    return new Mounting(rows);
  }

  private static void turn(double[] vector, int from, int to, double angleRad) {
    double a = vector[from];
    double b = vector[to];
    vector[from] = a * Math.cos(angleRad) - b * Math.sin(angleRad);
    vector[to] = a * Math.sin(angleRad) + b * Math.cos(angleRad);
  }

  /**
   * What a chip on this board feels in a coach.
   *
   * @param world the coach
   * @param armM how far the board sits above the axis about which the coach rocks, metres
   */
  Surroundings in(CoachWorld world, double armM) {
    double[] turn = rows.stream().mapToDouble(Double::doubleValue).toArray();
    Seat seat = world.seat(armM);
    double[] coachG = new double[3];
    return new Surroundings() {
      private long warmAtNanos = Long.MAX_VALUE;
      private double warmC;

      @Override
      public void specificForce(long nanos, double cornerHz, double[] outG) {
        seat.specificForce(nanos / NANOS_PER_SECOND, cornerHz, coachG);
        for (int axis = 0; axis < 3; axis++) {
          int row = 3 * axis;
          outG[axis] =
              turn[row] * coachG[0] + turn[row + 1] * coachG[1] + turn[row + 2] * coachG[2];
        }
      }

      @Override
      public double temperatureC(long nanos) {
        // No place warms so fast that a second matters.
        if (nanos < warmAtNanos || nanos - warmAtNanos >= NANOS_PER_SECOND) {
          warmAtNanos = nanos;
          warmC = world.temperatureC(nanos / NANOS_PER_SECOND);
        }
        return warmC;
      }
    };
  }
}
