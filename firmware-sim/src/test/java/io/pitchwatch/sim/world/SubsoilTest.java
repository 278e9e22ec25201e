package io.pitchwatch.sim.world;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SubsoilTest {

  private static final double HOUR = 3600;
  private static final Chassis COACH =
      new Chassis(
          List.of(
              new Axle("front", 0, 1.96, 3600, 0.09, 3600, 0.025, false),
              new Axle("rear", -5.6, 1.83, 6900, 0.08, 6900, 0.048, true)),
          List.of(),
          0.5);

  private static CoachWorld world(Surface surface, double uneven, double rainM) {
    Site site = new Site(new Ground(Attitude.LEVEL, surface.modulusPa()), Soil.of(surface), uneven);
    Happenings happenings = new Happenings(3, COACH, site);
    if (rainM > 0) {
      happenings.rain(new Rain.Shower(10 * HOUR, 4 * HOUR, rainM));
    }
    return happenings.in(new Climate(18, 0, 0, List.of()));
  }

  private static double leanDeg(CoachWorld world, double hour) {
    Attitude attitude = world.seat(0).attitude(hour * HOUR);
    return Math.toDegrees(Math.hypot(attitude.rollRad(), attitude.pitchRad()));
  }

  @Test
  void concreteStands() {
    assertEquals(0, leanDeg(world(Surface.CONCRETE, 1, 0.05), 1000), 1e-4);
  }

  @Test
  void evenSoilSinksWithoutLeaning() {
    Attitude attitude = world(Surface.SOFT, 0, 0.03).seat(0).attitude(48 * HOUR);
    assertEquals(0, attitude.rollRad(), 1e-9);
  }

  @Test
  void softGroundSettlesEverMoreSlowly() {
    CoachWorld world = world(Surface.SOFT, 0.5, 0);
    double first = leanDeg(world, 10);
    double second = leanDeg(world, 20) - first;
    double late = leanDeg(world, 210) - leanDeg(world, 200);
    assertTrue(first > second && second > late && late > 0, first + " " + second + " " + late);
  }

  @Test
  void rainMakesSoftGroundGiveWay() {
    CoachWorld wet = world(Surface.SOFT, 0.5, 0.02);
    CoachWorld dry = world(Surface.SOFT, 0.5, 0);
    assertEquals(leanDeg(dry, 10), leanDeg(wet, 10), 1e-3);
    double rate = (leanDeg(wet, 16) - leanDeg(wet, 14)) / 2;
    assertTrue(rate > 0.03 && rate < 0.5, rate + " deg/h");
    assertTrue(leanDeg(wet, 40) > leanDeg(dry, 40) + 0.2);
  }

  @Test
  void gravelHardlyMinds() {
    double change = leanDeg(world(Surface.GRAVEL, 0.5, 0.02), 40);
    assertTrue(change < 0.1, change + " deg");
  }

  @Test
  void soakedGroundDrainsWithinDays() {
    Rain rain = new Rain(List.of(new Rain.Shower(0, HOUR, 0.03)));
    assertTrue(rain.wetness(HOUR) > 0.95);
    assertEquals(rain.wetness(HOUR) / Math.E, rain.wetness(25 * HOUR), 1e-9);
    assertEquals(0, rain.wetness(-1));
    assertEquals(
        1, new Rain(List.of(new Rain.Shower(0, HOUR, 0.3))).wetness(HOUR), "no wetter than soaked");
  }

  /** Asked in long leaps or in short steps, the ground has sunk alike. */
  @Test
  void doesNotMindHowItIsAsked() {
    CoachWorld leaps = world(Surface.SOFT, 0.5, 0.02);
    CoachWorld steps = world(Surface.SOFT, 0.5, 0.02);
    Seat seat = steps.seat(0);
    for (int minute = 0; minute < 60 * 40; minute++) {
      seat.attitude(minute * 60.0 + 7);
    }
    assertEquals(leanDeg(leaps, 40), leanDeg(steps, 40));
  }
}
