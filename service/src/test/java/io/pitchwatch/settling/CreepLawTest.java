package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CreepLawTest {

  @Test
  void steadyRateTakesDistanceOverRate() {
    assertEquals(10, CreepLaw.linearHours(1, 0.1), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, CreepLaw.linearHours(1, 0));
    assertEquals(Double.POSITIVE_INFINITY, CreepLaw.linearHours(1, -0.1));
  }

  /** s = C log t is at t = 4 when its rate is C/4; it has gone a further C log 3 at t = 12. */
  @Test
  void logarithmicSinkingTakesItsOwnTime() {
    double c = 0.7;
    assertEquals(8, CreepLaw.logarithmicHours(c * Math.log(3), c / 4, 4), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, CreepLaw.logarithmicHours(1, 0, 4));
  }

  @Test
  void bothLawsAgreeOnWhatIsNear() {
    double linear = CreepLaw.linearHours(0.001, 0.1);
    assertEquals(1, CreepLaw.logarithmicHours(0.001, 0.1, 50) / linear, 1e-3);
    assertTrue(CreepLaw.logarithmicHours(1, 0.1, 5) > CreepLaw.linearHours(1, 0.1));
  }

  @Test
  void blocksSpeakForTheLawTheyFollow() {
    assertTrue(share(false) < 0.05, share(false) + "");
    assertTrue(share(true) > 0.95, share(true) + "");
  }

  private static double share(boolean logarithmic) {
    AxisWatch watch = new AxisWatch(GroundModel.withoutThermometer());
    double hours = 0;
    for (int i = 0; i < 2 * 144; i++) {
      hours = Math.max(0, i - 144) * Block.LENGTH_HOURS;
      double sunk = logarithmic ? 0.6 * Math.log1p(6 * hours) : 0.06 * hours;
      double ripple = 0.01 * Math.sin(i);
      double angle = Math.toRadians(0.2 + sunk + ripple);
      watch.accept(angle, 1e-10, 0, 0, i * Block.LENGTH_NANOS);
      watch.judge(10, 10);
    }
    assertTrue(watch.isSettling());
    return new CreepLaw().logarithmicShare(watch, 4);
  }
}
