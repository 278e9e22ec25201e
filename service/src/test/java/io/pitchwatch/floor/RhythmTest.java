package io.pitchwatch.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RhythmTest {

  private static final int BLOCK = 60;
  private static final double REACH = 0.01;

  private final Rhythm rhythm = new Rhythm(BLOCK);
  private final double[] v = new double[BLOCK];

  private double reach() {
    return rhythm.reach(v, BLOCK, 0, REACH);
  }

  @Test
  void everySecondThirdOrFourthValueKeepsTime() {
    for (int period = 2; period <= 4; period++) {
      for (int i = 0; i < BLOCK; i++) {
        v[i] = i % period == 1 ? -0.04 : 0.001;
      }
      assertTrue(reach() > 0.04, "period " + period);
    }
  }

  @Test
  void spikeAmongThemIsStillOne() {
    for (int i = 0; i < BLOCK; i++) {
      v[i] = i % 3 == 0 ? 0.04 : 0;
    }
    v[7] = 2;
    assertTrue(reach() > 0.04 && reach() < 0.1, reach() + " g");
  }

  @Test
  void nothingAndASingleBlowAndABurstKeepNoTime() {
    assertEquals(0, reach());
    v[20] = 1;
    assertEquals(0, reach());
    for (int i = 20; i < 40; i++) {
      v[i] = 1;
    }
    assertEquals(0, reach());
  }

  @Test
  void spikesByChanceKeepNoTime() {
    SplittableRandom random = new SplittableRandom(3);
    for (double share : new double[] {0.03, 0.1, 1 / 3.0}) {
      int kept = 0;
      for (int block = 0; block < 100_000; block++) {
        for (int i = 0; i < BLOCK; i++) {
          v[i] = random.nextDouble() < share ? 0.3 : 0;
        }
        kept += reach() > 0 ? 1 : 0;
      }
      assertTrue(kept <= 20, kept + " of 100000 blocks, a share of " + share + " wild");
    }
  }
}
