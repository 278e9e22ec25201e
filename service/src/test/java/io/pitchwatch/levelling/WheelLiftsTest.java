package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Three axles whose springs share a lift, every figure worked by hand. */
class WheelLiftsTest {

  /** 4000 kg and 100 mm of droop each: all springs alike. */
  private static Axle axle(String id, double xMm) {
    return new Axle(id, xMm, 2000, 4000, 100, 250, 1, false, false);
  }

  private static final JackPair REAR = new JackPair("rear", -5000, 1000, 330, 400, 150, 5000, 230);

  private static final Coach COACH =
      new Coach(
          "heron",
          Units.METRIC,
          List.of(axle("front", 0), axle("drive", -5000), axle("tag", -7000)),
          List.of(REAR),
          List.of(),
          List.of(),
          new Levelling(50, 150, 0.02, 12, 0.026, 0.009, 0.005),
          List.of(),
          List.of());

  /** Both wheels of the drive axle stand on 39 mm, nothing else is lifted. */
  private static final WheelLifts DRIVE =
      new WheelLifts(new Stance(COACH), new double[] {0, 39, 0}, new double[] {0, 39, 0});

  @Test
  void theBodyRestsOnTheLineThatBalancesTheSprings() {
    // Springs alike: the line of least squares through (0, 0), (−5000, 39), (−7000, 0). Their mean
    // is
    // (−4000, 13); slope = Σ(x + 4000)(y − 13) / Σ(x + 4000)² = (4000·(−13) − 1000·26 + 3000·13) /
    // (16 + 1 + 9)e6 = −39000 / 26e6 = −0.0015.
    // The front lies lower than the outer axles, both at 0, say: by atan 0.0015 = 0.0859 deg.
    assertEquals(Math.toDegrees(Math.atan(0.0015)), Math.toDegrees(DRIVE.sharedPitchRad()), 1e-9);
  }

  @Test
  void whatTheBodyIsFurtherFromAnAxleCountsForItsDroop() {
    // The line is 13 − 0.0015·4000 = 7 at the front, 14.5 at the drive, 17.5 at the tag axle.
    assertArrayEquals(new double[] {7, 14.5 - 39, 17.5}, DRIVE.unevenMm(), 1e-9);
  }

  @Test
  void aFootIsAsFarFromTheGroundAsTheLiftsOrTheLineSay() {
    // At the drive axle the lifts say 330 + 39, the line 330 + 14.5: the lifts are more.
    assertEquals(new Sides(369, 369), DRIVE.gapMm(REAR));
    assertEquals(new Sides(0, 0), DRIVE.besidesMm(REAR));
    // At the tag axle the lifts say nothing more, the line 17.5.
    JackPair tag = new JackPair("tag", -7000, 1000, 330, 400, 150, 5000, 230);
    assertEquals(330, DRIVE.gapMm(tag).left(), 1e-9);
    assertEquals(17.5, DRIVE.besidesMm(tag).left(), 1e-9);
  }
}
