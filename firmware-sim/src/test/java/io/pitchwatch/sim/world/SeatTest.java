package io.pitchwatch.sim.world;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SeatTest {

  private static final Chassis COACH =
      new Chassis(
          List.of(
              new Axle("front", 0, 1.96, 3600, 0.09, 3600, 0.025, false),
              new Axle("rear", -5.6, 1.83, 6900, 0.08, 6900, 0.048, true)),
          List.of(),
          0);
  private static final Climate MILD = new Climate(18, 0, 0, List.of());

  private static Site rock(double rollDeg, double pitchDeg) {
    Attitude lie = new Attitude(Math.toRadians(rollDeg), Math.toRadians(pitchDeg));
    return new Site(new Ground(lie, Double.POSITIVE_INFINITY), Soil.NONE, 0);
  }

  /** u for 10 deg roll and 5 deg pitch by equations 25 and 26 of NXP AN3461, computed. */
  @Test
  void specificForceAtRestIsTheUnitUpVector() {
    Seat seat = new Happenings(1, COACH, rock(10, 5)).in(MILD).seat(0);
    double[] g = new double[3];
    seat.specificForce(5, 50, g);
    assertEquals(-0.087155743, g[0], 1e-8);
    assertEquals(0.172987394, g[1], 1e-8);
    assertEquals(0.981060262, g[2], 1e-8);
  }

  @Test
  void engineShakesAcrossAsMuchAsItIsTold() {
    Happenings happenings = new Happenings(1, COACH, rock(0, 0));
    happenings.engine(0, Double.POSITIVE_INFINITY, 32.5, 0.022);
    double[] spread = spread(happenings.in(MILD), 0, 60, 1e6);
    assertEquals(0.012, spread[0], 0.002);
    assertEquals(0.022, spread[1], 0.001);
    assertEquals(0.0187, spread[2], 0.003);
  }

  /** A one-pole filter leaves 1/√(1 + (f/fc)²) of the main line; overtones are left less still. */
  @Test
  void filterWeakensTheEngine() {
    Happenings happenings = new Happenings(1, COACH, rock(0, 0));
    happenings.engine(0, Double.POSITIVE_INFINITY, 32.5, 0.022);
    double[] spread = spread(happenings.in(MILD), 0, 60, 5);
    double line = 0.022 * 0.93 / Math.hypot(1, 32.5 / 5);
    assertEquals(line, spread[1], 0.05 * line);
  }

  @Test
  void peopleAndWindRockButDoNotLeanForGood() {
    Happenings happenings = new Happenings(1, COACH, rock(1, 0));
    happenings.walk(10, 610, 2, Math.toRadians(0.02));
    happenings.wind(700, 1300, Math.toRadians(0.08));
    CoachWorld world = happenings.in(MILD);
    double people = Math.toDegrees(rollSpreadRad(world, 20, 600));
    double wind = Math.toDegrees(rollSpreadRad(world, 750, 1250));
    assertTrue(people > 0.01 && people < 0.1, people + " deg");
    assertTrue(wind > 0.03 && wind < 0.15, wind + " deg");
    for (double quietS : new double[] {5, 650, 1301}) {
      assertEquals(1, Math.toDegrees(world.seat(0).attitude(quietS).rollRad()), 1e-9);
    }
  }

  @Test
  void slideOutComesGentlyAndStaysUntilTheCoachDrives() {
    Happenings happenings = new Happenings(1, COACH, rock(0, 0));
    happenings.shift(10, 30, Course.SMOOTH, new Attitude(Math.toRadians(0.2), 0));
    happenings.travel(new Happenings.Trip(1000, 1100, 1110, 10), rock(0, 0));
    CoachWorld world = happenings.in(MILD);
    assertEquals(0, rollDeg(world, 10), 1e-9);
    assertEquals(0.1, rollDeg(world, 25), 1e-9);
    assertEquals(0.2, rollDeg(world, 999), 1e-9);
    assertEquals(0, rollDeg(world, 2000), 1e-9);
  }

  @Test
  void drivesFromOneStandToTheNext() {
    Happenings happenings = new Happenings(1, COACH, rock(1, 0));
    happenings.travel(new Happenings.Trip(100, 200, 205, 10), rock(-2, 1));
    CoachWorld world = happenings.in(MILD);
    assertFalse(world.underWay(99));
    assertTrue(world.underWay(150));
    assertFalse(world.underWay(205));
    assertEquals(1, rollDeg(world, 99), 1e-6);
    assertEquals(-2, rollDeg(world, 205), 1e-6);
    double[] spread = spread(world, 120, 60, 50);
    assertTrue(spread[0] > 0.02 && spread[2] > 0.02, "the road shakes");
    assertEquals(0, spread(world, 210, 30, 50)[1], 1e-7);
  }

  /** Pulling away pushes back, braking forward: the change of speed is what was asked for. */
  @Test
  void accelerationAddsUpToTheSpeed() {
    Happenings happenings = new Happenings(1, COACH, rock(0, 0));
    happenings.travel(new Happenings.Trip(10, 100, 105, 10), rock(0, 0));
    CoachWorld world = happenings.in(MILD);
    double[] g = new double[3];
    double pulled = 0;
    Seat seat = world.seat(0);
    for (double s = 10; s < 21.2; s += 0.001) {
      seat.specificForce(s, 50, g);
      pulled += 0.001 * 9.80665 * g[0];
    }
    assertEquals(10, pulled, 3, "within what the road adds");
  }

  /** Asked twice, or in another order, or from a seat of its own, the world answers the same. */
  @Test
  void answersDependOnTimeAlone() {
    Happenings happenings = new Happenings(77, COACH, rock(1, 1));
    happenings.engine(5, 50, 32.5, 0.022);
    happenings.walk(10, 60, 3, 0.001);
    happenings.lay(20, 10, new Happenings.Wheel("rear", Side.RIGHT), new Stack(0.04, 0.2));
    happenings.travel(new Happenings.Trip(80, 90, 95, 8), rock(2, 0));
    CoachWorld world = happenings.in(MILD);
    SplittableRandom random = new SplittableRandom(5);
    Seat wandering = world.seat(0.6);
    double[] one = new double[3];
    double[] two = new double[3];
    for (int i = 0; i < 2000; i++) {
      double timeS = random.nextDouble(120);
      wandering.specificForce(timeS, 50, one);
      world.seat(0.6).specificForce(timeS, 50, two);
      for (int axis = 0; axis < 3; axis++) {
        assertEquals(two[axis], one[axis], 2e-8, "at " + timeS + " s");
      }
    }
  }

  @Test
  void sensorsPlaceWarmsInTheSunAndByDay() {
    Climate climate = new Climate(15, 5, 9, List.of(new Climate.Sun(3600, 7200, 10, 1800)));
    assertEquals(20, climate.at(6 * 3600) - sun(climate, 6 * 3600), 1e-9, "15 h is warmest");
    assertEquals(10 * (1 - Math.exp(-4)), sun(climate, 3600 + 7200), 1e-9);
    assertTrue(sun(climate, 3600 + 9000) < 10 * Math.exp(-0.9));
  }

  private static double sun(Climate climate, double timeS) {
    return climate.spells().get(0).riseAt(timeS);
  }

  private static double rollDeg(CoachWorld world, double timeS) {
    return Math.toDegrees(world.seat(0).attitude(timeS).rollRad());
  }

  private static double rollSpreadRad(CoachWorld world, double fromS, double toS) {
    Seat seat = world.seat(0);
    double sum = 0;
    double square = 0;
    int count = 0;
    for (double s = fromS; s < toS; s += 0.0371) {
      double roll = seat.attitude(s).rollRad();
      sum += roll;
      square += roll * roll;
      count++;
    }
    return Math.sqrt(square / count - sum / count * (sum / count));
  }

  private static double[] spread(CoachWorld world, double fromS, double lastsS, double cornerHz) {
    Seat seat = world.seat(0);
    double[] sum = new double[3];
    double[] square = new double[3];
    double[] g = new double[3];
    int count = 0;
    for (double s = fromS; s < fromS + lastsS; s += 0.00137) {
      seat.specificForce(s, cornerHz, g);
      for (int axis = 0; axis < 3; axis++) {
        sum[axis] += g[axis];
        square[axis] += g[axis] * g[axis];
      }
      count++;
    }
    double[] spread = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      double mean = sum[axis] / count;
      spread[axis] = Math.sqrt(Math.max(0, square[axis] / count - mean * mean));
    }
    return spread;
  }
}
