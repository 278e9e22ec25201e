package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DoubtsTest {

  private static final double STEP = 1 / 256.0;
  private static final long SEED = 20260801;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private int passed;
  private long nanos;
  private Doubts doubts;

  @BeforeEach
  void begin() {
    passed = 0;
    doubts = new Doubts(Adxl345Driver.FACTS, 100, (t, x, y, z) -> passed++);
  }

  private void give(double x, double y, double z) {
    nanos += 10_000_000;
    doubts.sample(nanos, quantised(x), quantised(y), quantised(z));
  }

  private static double quantised(double g) {
    return STEP * Math.rint(g / STEP);
  }

  private double noise(double sigma) {
    return sigma * random.nextGaussian();
  }

  private void rest(int count) {
    for (int i = 0; i < count; i++) {
      give(0.03 + noise(0.0029), -0.02 + noise(0.0029), 1 + noise(0.0043));
    }
  }

  @Test
  void chipAtRestIsNotDoubted() {
    rest(60_000);
    assertEquals("", doubts.doubt());
    assertFalse(doubts.frozen());
    assertEquals(60_000 - 3, passed, 2, "all but the first few, which show life");
    assertEquals(0, doubts.spikes());
    assertTrue(doubts.still());
  }

  /** 22 mg at 32.5 Hz, as a real bus idles. */
  @Test
  void idlingEngineIsNotDoubted() {
    for (int i = 0; i < 60_000; i++) {
      double shake = 0.031 * Math.sin(2 * Math.PI * 32.5 * i / 100);
      give(noise(0.0029) + shake, noise(0.0029), 1 + noise(0.0043) + shake);
    }
    assertEquals("", doubts.doubt());
    assertEquals(0, doubts.spikes());
    assertTrue(doubts.still());
  }

  @Test
  void roughRoadIsNotDoubtedButNotStillEither() {
    for (int i = 0; i < 6_000; i++) {
      give(noise(0.2), noise(0.2), 1 + noise(0.28));
    }
    assertEquals("", doubts.doubt());
    assertFalse(doubts.still());
  }

  @Test
  void oneValueForTwoSecondsIsFrozenAndNoLongerHandedOn() {
    rest(500);
    for (int i = 0; i < 1000; i++) {
      give(0.03, -0.02, 1);
    }
    assertTrue(doubts.frozen());
    assertTrue(passed < 500 + 202, "passed " + passed);
    int held = passed;
    give(0, 0, 0);
    assertEquals(held, passed, "one new value may be a reset's");
    rest(10);
    assertFalse(doubts.frozen(), "a few new values end it");
    assertTrue(passed >= held + 7);
  }

  @Test
  void restartDoesNotThawAFrozenValue() {
    rest(10);
    for (int i = 0; i < 300; i++) {
      give(0.03, -0.02, 1);
    }
    int before = passed;
    doubts.restart(nanos);
    for (int i = 0; i < 100; i++) {
      give(0.03, -0.02, 1);
    }
    assertEquals(before, passed);
  }

  @Test
  void oneDeadAxisIsDoubted() {
    for (int i = 0; i < 1100; i++) {
      give(0.03, noise(0.0029), 1 + noise(0.0043));
    }
    assertEquals("its x axis repeats one value", doubts.doubt());
  }

  @Test
  void spikeIsCountedOnceAndHandedOn() {
    rest(1000);
    give(0.03, 1.5, 1);
    rest(1000);
    assertEquals(1, doubts.spikes());
    assertEquals(2001 - 3, passed, 2);
    assertEquals("", doubts.doubt());
  }

  @Test
  void stepOfAKerbIsNoSpike() {
    rest(1000);
    for (int i = 0; i < 1000; i++) {
      give(0.4 + noise(0.0029), noise(0.0029), 0.9 + noise(0.0043));
    }
    assertEquals(0, doubts.spikes());
  }

  @Test
  void manySpikesAreDoubted() {
    for (int i = 0; i < 3000; i++) {
      rest(29);
      give(0.03, -1.2, 1);
    }
    assertTrue(doubts.spikes() > 2900, "spikes " + doubts.spikes());
    assertEquals("more than one in a hundred samples is a spike", doubts.doubt());
  }

  @Test
  void noiseOfRandomBitsIsDoubted() {
    for (int i = 0; i < 3000; i++) {
      give(4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2);
    }
    assertEquals("it is noisier than any coach can be", doubts.doubt());
  }

  /** The data sheet allows 0.25 g of offset, 10 % of scale and 1.2 mg/°C; half a g is beyond. */
  @Test
  void gravityOfHalfAsMuchAgainIsDoubted() {
    for (int i = 0; i < 6000; i++) {
      give(noise(0.0029), noise(0.0029), 1.5 + noise(0.0043));
    }
    assertEquals("what it measures at rest is too far from 1 g", doubts.doubt());
  }

  @Test
  void partWithinItsDataSheetIsNotDoubted() {
    for (int i = 0; i < 6000; i++) {
      give(0.15 + noise(0.0029), 0.15 + noise(0.0029), 1.25 + noise(0.0043));
    }
    assertEquals("", doubts.doubt());
  }

  @Test
  void saturationIsCountedNotHandedOnAndDoubted() {
    rest(1000);
    for (int i = 0; i < 300; i++) {
      doubts.saturated(nanos += 10_000_000);
    }
    assertEquals(300, doubts.saturatedSamples());
    assertEquals(1000 - 3, passed, 2);
    assertEquals("more than a tenth of its samples are at the end of its range", doubts.doubt());
  }

  @Test
  void oneValueEverSinceTheStartPassesAsDoubtful() {
    for (int i = 0; i < 1000; i++) {
      give(0.035, -0.012, 1.0);
    }
    assertFalse(doubts.frozen());
    assertEquals(1000 - 200, passed, 2, "all but the first two seconds");
    assertTrue(doubts.doubt().startsWith("it has said one value ever since the start"));
  }

  @Test
  void zeroEverSinceTheStartDoesNotPass() {
    for (int i = 0; i < 1000; i++) {
      give(0, 0, 0);
    }
    assertEquals(0, passed);
    assertTrue(doubts.frozen());
  }
}
