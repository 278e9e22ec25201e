package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A coach that stands somewhere: what lies under its wheels and jacks, and the equilibrium that
 * follows.
 *
 * <p>Found from forces alone: weight, springs, ground and jacks, wheels that cannot pull. Lifts are
 * heights over the ground that was there; what is laid gives way with the ground under it.
 */
public final class Parking {

  private static final Side[] SIDES = Side.values();

  /** A jack, its leg and the frame above it, as a spring, m/N (common practice: 1 mm a tonne). */
  private static final double JACK_GIVES_M_PER_N = 1e-7;

  private final Chassis chassis;
  private final Ground ground;
  private final Equilibrium equilibrium;
  private final double[][] liftM;
  private final double[][] sunkM;
  private final double[][] areaM2;
  private final int[] laidTimes;
  private final double[][] padM;
  private final double[] extendedM;
  private boolean changed = true;

  /**
   * A coach on its wheels, jacks retracted.
   *
   * @param chassis the coach
   * @param ground where it stands
   */
  public Parking(Chassis chassis, Ground ground) {
    this.chassis = chassis;
    this.ground = ground;
    int axles = chassis.axles().size();
    int pairs = chassis.jackPairs().size();
    liftM = new double[axles][2];
    sunkM = new double[axles][2];
    areaM2 = new double[axles][2];
    laidTimes = new int[2 * axles];
    padM = new double[pairs][2];
    extendedM = new double[pairs];
    Arrays.fill(extendedM, Double.NEGATIVE_INFINITY);
    for (int i = 0; i < axles; i++) {
      Arrays.fill(areaM2[i], chassis.axles().get(i).contactM2());
    }
    equilibrium = new Equilibrium(chassis);
  }

  /** The coach. */
  public Chassis chassis() {
    return chassis;
  }

  /**
   * Puts a stack under a wheel station, in place of what was there, on ground that has not sunk.
   *
   * @param axle id of the axle
   * @param side left or right
   * @param stack what is put there
   */
  public void lay(String axle, Side side, Stack stack) {
    int index = chassis.axle(axle);
    liftM[index][side.index()] = stack.heightM();
    sunkM[index][side.index()] = 0;
    areaM2[index][side.index()] = stack.areaM2();
    laidTimes[2 * index + side.index()]++;
    changed = true;
  }

  /** Height of the stack under a wheel station, metres. */
  double layM(String axle, Side side) {
    return liftM[chassis.axle(axle)][side.index()];
  }

  /**
   * Lets the ground under a wheel station sink further.
   *
   * @param axle id of the axle
   * @param side left or right
   * @param byM metres, downwards
   */
  public void sink(String axle, Side side, double byM) {
    Check.finite("byM", byM);
    sunkM[chassis.axle(axle)][side.index()] += byM;
    changed = true;
  }

  /**
   * Puts pads under a pair of jacks, in place of what was there; only while it is retracted.
   *
   * @param pair id of the pair
   * @param leftM height under the left foot, metres
   * @param rightM height under the right foot, metres
   * @throws IllegalStateException if the jacks stand on the ground
   */
  public void pad(String pair, double leftM, double rightM) {
    Check.atLeast("leftM", leftM, 0);
    Check.atLeast("rightM", rightM, 0);
    int index = chassis.jackPair(pair);
    if (Double.isFinite(extendedM[index])) {
      throw new IllegalStateException("jack pair " + pair + " stands on the ground");
    }
    padM[index][0] = leftM;
    padM[index][1] = rightM;
  }

  /**
   * Runs a pair of jacks out: first to contact if it is not there yet, then further.
   *
   * @param pair id of the pair
   * @param byM how much further, in the mean of both, metres; less than 0 lets it down
   */
  public void raise(String pair, double byM) {
    Check.finite("byM", byM);
    int index = chassis.jackPair(pair);
    settleDown();
    extendedM[index] = Math.max(extendedM[index], meanGapM(index)) + byM;
    changed = true;
  }

  /** Takes a pair of jacks up. */
  public void retract(String pair) {
    extendedM[chassis.jackPair(pair)] = Double.NEGATIVE_INFINITY;
    changed = true;
  }

  /** How the floor lies in equilibrium. */
  public Attitude attitude() {
    settleDown();
    return equilibrium.attitude();
  }

  /** How often something was laid under a wheel; wheels count axle by axle, left then right. */
  int laidTimes(int wheel) {
    return laidTimes[wheel];
  }

  /** Lets the ground under a wheel sink further, metres. */
  void sink(int wheel, double byM) {
    sunkM[wheel / 2][wheel % 2] += byM;
    changed = true;
  }

  /** Pressure on the ground under a wheel, Pa. */
  double pressurePa(int wheel) {
    settleDown();
    return equilibrium.wheelN(wheel / 2, wheel % 2) / areaM2[wheel / 2][wheel % 2];
  }

  /** How far the ground gave at once under a wheel, metres. */
  double pressedM(int wheel) {
    settleDown();
    double loadN = equilibrium.wheelN(wheel / 2, wheel % 2);
    return loadN * ground.givesMPerN(areaM2[wheel / 2][wheel % 2]);
  }

  /** Width of what stands on the ground under a wheel, metres. */
  double widthM(int wheel) {
    return Math.sqrt(areaM2[wheel / 2][wheel % 2]);
  }

  /** Everything about the equilibrium. */
  public Pose pose() {
    settleDown();
    List<Pose.Wheel> wheels = new ArrayList<>();
    for (int i = 0; i < liftM.length; i++) {
      Axle axle = chassis.axles().get(i);
      for (Side side : SIDES) {
        double loadN = equilibrium.wheelN(i, side.index());
        wheels.add(new Pose.Wheel(axle.id(), side, axle.parkingBrake(), loadN));
      }
    }
    List<Pose.Jack> jacks = new ArrayList<>();
    for (int i = 0; i < extendedM.length; i++) {
      for (Side side : SIDES) {
        jacks.add(jack(i, side));
      }
    }
    return new Pose(equilibrium.attitude(), wheels, jacks);
  }

  private Pose.Jack jack(int index, Side side) {
    JackPair pair = chassis.jackPairs().get(index);
    double loadN = equilibrium.jackN(index);
    // Equal pressure: each foot goes as far as it finds ground, and presses it as deep as the
    // other.
    double pressedM = Math.max(0, extendedM[index] - meanGapM(index));
    double travelM = Double.isFinite(extendedM[index]) ? gapM(index, side.index()) + pressedM : 0;
    return new Pose.Jack(
        pair.id(), side, loadN, travelM, pair.strokeM(), pair.capacityKg() * Sway.G);
  }

  private double gapM(int index, int side) {
    JackPair pair = chassis.jackPairs().get(index);
    double yM = SIDES[side].sign() * pair.spacingM() / 2;
    return pair.clearanceM()
        + equilibrium.bodyM(pair.xM(), yM)
        - ground.heightM(pair.xM(), yM)
        - padM[index][side];
  }

  private double meanGapM(int index) {
    return (gapM(index, 0) + gapM(index, 1)) / 2;
  }

  private void settleDown() {
    if (!changed) {
      return;
    }
    changed = false;
    for (int i = 0; i < liftM.length; i++) {
      Axle axle = chassis.axles().get(i);
      for (int side = 0; side < 2; side++) {
        double yM = SIDES[side].sign() * axle.trackM() / 2;
        double heightM = ground.heightM(axle.xM(), yM) + liftM[i][side] - sunkM[i][side];
        equilibrium.wheelStandsOn(i, side, heightM, ground.givesMPerN(areaM2[i][side]));
      }
    }
    for (int i = 0; i < extendedM.length; i++) {
      JackPair pair = chassis.jackPairs().get(i);
      double footM = ground.heightM(pair.xM(), 0) + (padM[i][0] + padM[i][1]) / 2;
      double gives = JACK_GIVES_M_PER_N + ground.givesMPerN(pair.footM2());
      equilibrium.jackReaches(i, footM + extendedM[i] - pair.clearanceM(), gives);
    }
    equilibrium.find();
  }
}
