package io.pitchwatch.sim.world;

import java.util.Arrays;

/**
 * Finds where a body on unilateral springs comes to rest, by Newton's method on the balance of
 * force and moments.
 *
 * <p>Unknown: the body's rise h and its slopes p = tan roll, q = tan pitch; a point of the body
 * lies at h + y·p − x·q over its rest on level ground. Weight acts at the centre of gravity, which
 * moves by arm·slope towards the low side. Springs are linear as long as the same wheels touch, so
 * that a few steps suffice; a step that makes things worse is halved.
 */
final class Equilibrium {

  private static final int MOST_STEPS = 200;
  private static final double CLOSE = 1e-12;

  private final Chassis chassis;
  private final WheelSpring[] springs;
  private final double[][] standsM;
  private final double[][] givesMPerN;
  private final double[] jackReachM;
  private final double[] jackGivesMPerN;
  private final double[] jackN;
  private final double[] body = new double[3];
  private final double[] residual = new double[3];
  private final double[][] slope = new double[3][3];
  private boolean found;

  Equilibrium(Chassis chassis) {
    this.chassis = chassis;
    int axles = chassis.axles().size();
    int pairs = chassis.jackPairs().size();
    springs = new WheelSpring[axles];
    for (int i = 0; i < axles; i++) {
      Axle axle = chassis.axles().get(i);
      springs[i] = new WheelSpring(axle, chassis.rollStiffnessNmPerRad(axle));
    }
    standsM = new double[axles][2];
    givesMPerN = new double[axles][2];
    jackReachM = new double[pairs];
    jackGivesMPerN = new double[pairs];
    jackN = new double[pairs];
  }

  /** Height of what a wheel stands on, metres, and how much that gives, m/N. */
  void wheelStandsOn(int axle, int side, double heightM, double gives) {
    standsM[axle][side] = heightM;
    givesMPerN[axle][side] = gives;
  }

  /** Rise of the body's middle at which a pair begins to press, metres, and what it gives. */
  void jackReaches(int pair, double riseM, double gives) {
    jackReachM[pair] = riseM;
    jackGivesMPerN[pair] = gives;
  }

  Attitude attitude() {
    return new Attitude(Math.atan(body[1]), Math.atan(body[2]));
  }

  double wheelN(int axle, int side) {
    return springs[axle].loadN[side];
  }

  /** Load of each jack of a pair, N. */
  double jackN(int pair) {
    return jackN[pair] / 2;
  }

  /** Rise of a point of the body over its rest, metres. */
  double bodyM(double xM, double yM) {
    return body[0] + yM * body[1] - xM * body[2];
  }

  /** Moves the body to rest. */
  void find() {
    if (!found) {
      startOnTheGround();
      found = true;
    }
    double error = balance();
    for (int step = 0; step < MOST_STEPS && error > CLOSE; step++) {
      double[] from = body.clone();
      double[] move = solve();
      double share = 1;
      double next;
      do {
        for (int i = 0; i < 3; i++) {
          body[i] = from[i] - share * move[i];
        }
        next = balance();
        share /= 2;
      } while (!(next < error) && share > 1e-6);
      error = next;
    }
    if (!(error < 1e-6)) {
      throw new IllegalStateException(
          "no equilibrium: " + chassis + " does not stand on what lies under it");
    }
  }

  /** A plane through what the first and last wheels stand on. */
  private void startOnTheGround() {
    int last = springs.length - 1;
    double frontM = (standsM[0][0] + standsM[0][1]) / 2;
    double rearM = (standsM[last][0] + standsM[last][1]) / 2;
    double frontX = chassis.axles().get(0).xM();
    double rearX = chassis.axles().get(last).xM();
    body[1] = (standsM[0][0] - standsM[0][1]) / chassis.axles().get(0).trackM();
    body[2] = (rearM - frontM) / (frontX - rearX);
    body[0] = frontM + frontX * body[2];
  }

  /**
   * Fills residual and slope for the present body; returns how far from balance it is, relative.
   */
  private double balance() {
    double weightN = chassis.weightN();
    double armNm = weightN * chassis.rollArmM();
    residual[0] = -weightN;
    residual[1] = armNm * body[1];
    residual[2] = weightN * chassis.centreM() + armNm * body[2];
    for (double[] row : slope) {
      Arrays.fill(row, 0);
    }
    slope[1][1] = armNm;
    slope[2][2] = armNm;
    for (int i = 0; i < springs.length; i++) {
      addAxle(i);
    }
    for (int i = 0; i < jackN.length; i++) {
      addJacks(i);
    }
    double force = Math.abs(residual[0]);
    double moment = Math.max(Math.abs(residual[1]), Math.abs(residual[2]));
    return (force + moment) / weightN;
  }

  private void addAxle(int index) {
    WheelSpring spring = springs[index];
    double xM = chassis.axles().get(index).xM();
    double halfM = chassis.axles().get(index).trackM() / 2;
    spring.load(
        standsM[index][0] - bodyM(xM, halfM),
        standsM[index][1] - bodyM(xM, -halfM),
        givesMPerN[index][0],
        givesMPerN[index][1]);
    for (int wheel = 0; wheel < 2; wheel++) {
      double yM = wheel == 0 ? halfM : -halfM;
      add(xM, yM, spring.loadN[wheel]);
      for (int under = 0; under < 2; under++) {
        addSlope(xM, yM, under == 0 ? halfM : -halfM, spring.rateNPerM[wheel][under]);
      }
    }
  }

  private void addJacks(int index) {
    double xM = chassis.jackPairs().get(index).xM();
    double pressedM = jackReachM[index] - bodyM(xM, 0);
    double rate = 2 / jackGivesMPerN[index];
    jackN[index] = pressedM > 0 ? rate * pressedM : 0;
    if (pressedM > 0) {
      add(xM, 0, jackN[index]);
      addSlope(xM, 0, 0, rate);
    }
  }

  /** An upward force on the body at a place. */
  private void add(double xM, double yM, double forceN) {
    residual[0] += forceN;
    residual[1] += yM * forceN;
    residual[2] -= xM * forceN;
  }

  /** A force at y that falls by a rate as the body rises at another y of the same axle. */
  private void addSlope(double xM, double yM, double risesAtM, double rate) {
    double[] arm = {1, yM, -xM};
    double[] rise = {1, risesAtM, -xM};
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        slope[i][j] -= arm[i] * rate * rise[j];
      }
    }
  }

  /** The Newton step, by Cramer's rule; a little of it if the body has lost its footing. */
  private double[] solve() {
    double determinant = determinant(slope);
    double[] step = new double[3];
    double scale = Math.abs(slope[0][0] * slope[1][1] * slope[2][2]);
    if (!(Math.abs(determinant) > 1e-12 * Math.max(scale, 1))) {
      step[0] = -residual[0] / chassis.weightN() * 0.01;
      return step;
    }
    for (int column = 0; column < 3; column++) {
      double[][] replaced = {slope[0].clone(), slope[1].clone(), slope[2].clone()};
      for (int row = 0; row < 3; row++) {
        replaced[row][column] = residual[row];
      }
      step[column] = determinant(replaced) / determinant;
    }
    return step;
  }

  private static double determinant(double[][] m) {
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }
}
