package io.pitchwatch.sim.world;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ParkingTest {

  private static final double G = 9.80665;
  private static final Axle FRONT = new Axle("front", 0, 1.96, 3600, 0.09, 1, 0.05, false);
  private static final Axle REAR = new Axle("rear", -5.6, 1.83, 6900, 0.08, 1.9, 0.1, true);
  private static final JackPair FRONT_JACKS =
      new JackPair("front", -0.9, 1.5, 0.33, 0.4, 5000, 0.09);
  private static final JackPair REAR_JACKS = new JackPair("rear", -6.6, 1.2, 0.30, 0.4, 5000, 0.09);

  private static Chassis heron(double armM) {
    return new Chassis(List.of(FRONT, REAR), List.of(FRONT_JACKS, REAR_JACKS), armM);
  }

  private static Ground rock(double rollDeg, double pitchDeg) {
    return new Ground(
        new Attitude(Math.toRadians(rollDeg), Math.toRadians(pitchDeg)), Double.POSITIVE_INFINITY);
  }

  @Test
  void standsLevelOnLevelRockAndCarriesItsLoads() {
    Pose pose = new Parking(heron(0.5), Ground.rock()).pose();
    assertEquals(0, pose.attitude().rollRad(), 1e-12);
    assertEquals(0, pose.attitude().pitchRad(), 1e-12);
    assertEquals(1800 * G, pose.wheel("front", Side.LEFT).orElseThrow().loadN(), 1e-3);
    assertEquals(3450 * G, pose.wheel("rear", Side.RIGHT).orElseThrow().loadN(), 1e-3);
  }

  @Test
  void liesAsTheGroundLiesIfItsWeightSitsOnTheRollAxis() {
    Attitude attitude = new Parking(heron(0), rock(2.1, -0.8)).attitude();
    assertEquals(2.1, Math.toDegrees(attitude.rollRad()), 1e-6);
    assertEquals(-0.8, Math.toDegrees(attitude.pitchRad()), 1e-6);
  }

  @Test
  void leansFurtherByWeightTimesArmOverStiffness() {
    Chassis chassis = heron(0.5);
    Attitude attitude = new Parking(chassis, rock(2, 0)).attitude();
    double gain = 1 / (1 - chassis.weightN() * 0.5 / chassis.rollStiffnessNmPerRad());
    assertEquals(Math.tan(Math.toRadians(2)) * gain, Math.tan(attitude.rollRad()), 1e-9);
  }

  @Test
  void liftOfOneAxleTurnsTheBodyByItsShareOfStiffness() {
    Parking parking = new Parking(heron(0), Ground.rock());
    parking.lay("rear", Side.RIGHT, new Stack(0.04, 0.1));
    double share = 1.9 / 2.9;
    assertEquals(-share * 0.04 / 1.83, Math.tan(parking.attitude().rollRad()), 1e-9);
    double rearRises = 0.04 / 2;
    assertEquals(rearRises / 5.6, Math.tan(parking.attitude().pitchRad()), 1e-9);
  }

  @Test
  void wheelThatLosesItsLoadHangs() {
    Parking parking = new Parking(heron(0.5), Ground.rock());
    parking.lay("front", Side.LEFT, new Stack(0.30, 0.05));
    Pose pose = parking.pose();
    assertTrue(pose.wheel("front", Side.RIGHT).orElseThrow().hangs());
    assertFalse(pose.brakedTyreHangs());
    assertBalanced(pose, heron(0.5));
  }

  @Test
  void jacksOfAPairPushAlikeWhateverTheGround() {
    Parking parking = new Parking(heron(0), rock(3, 0));
    parking.raise("front", 0.02);
    Pose pose = parking.pose();
    Pose.Jack left = pose.jack("front", Side.LEFT).orElseThrow();
    Pose.Jack right = pose.jack("front", Side.RIGHT).orElseThrow();
    assertEquals(left.loadN(), right.loadN());
    assertTrue(left.loadN() > 0);
    assertEquals(3, Math.toDegrees(pose.attitude().rollRad()), 1e-6, "they do not turn it");
    assertBalanced(pose, heron(0));
  }

  @Test
  void raisingTheFrontPairLiftsTheFrontByAsMuch() {
    Parking parking = new Parking(heron(0), Ground.rock());
    parking.raise("front", 0);
    parking.raise("rear", 0);
    parking.raise("front", 0.03);
    double tan = Math.tan(parking.attitude().pitchRad());
    assertEquals(-0.03 / 5.7, tan, 0.1 * 0.03 / 5.7, "less what jacks and frame give");
    assertTrue(tan > -0.03 / 5.7);
  }

  @Test
  void raisingTooFarLetsTheTyresHangAndPassesTheStroke() {
    Parking parking = new Parking(heron(0.5), Ground.rock());
    parking.raise("rear", 0.2);
    Pose pose = parking.pose();
    assertTrue(pose.brakedTyreHangs());
    assertTrue(pose.jack("rear", Side.LEFT).orElseThrow().overStroke());
    assertTrue(pose.jack("rear", Side.LEFT).orElseThrow().travelM() > 0.4);
  }

  @Test
  void padsTakeTravelOffTheJacks() {
    Parking parking = new Parking(heron(0), Ground.rock());
    parking.pad("front", 0.114, 0.19);
    parking.raise("front", 0.012);
    Pose pose = parking.pose();
    double left = pose.jack("front", Side.LEFT).orElseThrow().travelM();
    double right = pose.jack("front", Side.RIGHT).orElseThrow().travelM();
    assertEquals(0.19 - 0.114, left - right, 1e-9);
    assertEquals(0.33 + 0.012 - (0.114 + 0.19) / 2, (left + right) / 2, 1e-3);
  }

  @Test
  void softGroundGivesUnderTheWheels() {
    Ground soft = new Ground(Attitude.LEVEL, 5e6);
    Parking parking = new Parking(heron(0), soft);
    parking.lay("rear", Side.RIGHT, new Stack(0, 1));
    assertTrue(
        parking.attitude().rollRad() < 0, "the side with the wider sheet under it sinks less");
  }

  @Test
  void retractedJacksCarryNothing() {
    Parking parking = new Parking(heron(0.5), rock(1, 1));
    Attitude before = parking.attitude();
    parking.raise("front", 0.05);
    parking.retract("front");
    assertEquals(before.pitchRad(), parking.attitude().pitchRad(), 1e-9);
    assertEquals(0, parking.pose().jack("front", Side.LEFT).orElseThrow().loadN());
  }

  @Test
  void everyPoseIsInBalance() {
    for (long seed = 0; seed < 2000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Chassis chassis = heron(random.nextDouble(0.8));
      Ground ground =
          new Ground(
              new Attitude(random.nextDouble(-0.07, 0.07), random.nextDouble(-0.07, 0.07)),
              Math.exp(random.nextDouble(Math.log(3e6), Math.log(1e10))));
      Parking parking = new Parking(chassis, ground);
      for (Axle axle : chassis.axles()) {
        parking.lay(
            axle.id(),
            random.nextBoolean() ? Side.LEFT : Side.RIGHT,
            new Stack(random.nextDouble(0.16), 0.1));
      }
      if (random.nextBoolean()) {
        parking.raise("front", random.nextDouble(0.06));
        parking.raise("rear", random.nextDouble(0.06));
      }
      try {
        assertBalanced(parking.pose(), chassis);
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError("seed " + seed, e);
      }
    }
  }

  /** Force and moments worked out again from the loads alone. */
  private static void assertBalanced(Pose pose, Chassis chassis) {
    double force = 0;
    double roll = 0;
    double pitch = 0;
    for (Pose.Wheel wheel : pose.wheels()) {
      Axle axle = chassis.axles().get(chassis.axle(wheel.axle()));
      force += wheel.loadN();
      roll += wheel.side().sign() * axle.trackM() / 2 * wheel.loadN();
      pitch += axle.xM() * wheel.loadN();
    }
    for (Pose.Jack jack : pose.jacks()) {
      force += jack.loadN();
      pitch += chassis.jackPairs().get(chassis.jackPair(jack.pair())).xM() * jack.loadN();
    }
    double weight = chassis.weightN();
    assertEquals(weight, force, 1e-2);
    double arm = weight * chassis.rollArmM();
    assertEquals(-arm * Math.tan(pose.attitude().rollRad()), roll, 1e-1);
    assertEquals(
        weight * chassis.centreM() + arm * Math.tan(pose.attitude().pitchRad()), pitch, 1e-1);
  }
}
