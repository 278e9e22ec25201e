package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SelfTestTest {

  private static final SelfTestLimits LIMITS = new SelfTestLimits(0.2, 3.7, -3.7, -0.2, 0.3, 5.0);

  private final SplittableRandom random = new SplittableRandom(11);

  private SelfTest.Verdict run(SelfTest test, int count, double[] change, double shake) {
    test.begin(0);
    feed(test, count, 0, 0, 0, shake);
    test.force(1000);
    test.sample(999, 99, 99, 99); // taken before it settled
    feed(test, count, change[0], change[1], change[2], shake);
    return test.judge(LIMITS);
  }

  private void feed(SelfTest test, int count, double x, double y, double z, double shake) {
    for (int i = 0; i < count; i++) {
      test.sample(
          1000 + i,
          x + shake * random.nextGaussian(),
          y + shake * random.nextGaussian(),
          1 + z + shake * random.nextGaussian());
    }
  }

  @Test
  void changeWithinTheLimitsPasses() {
    SelfTest test = new SelfTest();
    assertEquals(SelfTest.Verdict.PASSED, run(test, 12, new double[] {0.9, -0.9, 1.5}, 0.022));
    assertEquals("", test.fault());
  }

  @Test
  void noChangeFailsAndSaysWhichAxis() {
    SelfTest test = new SelfTest();
    assertEquals(SelfTest.Verdict.FAILED, run(test, 12, new double[] {0, 0, 0}, 0));
    assertEquals("its self-test moved x by 0.00 g; 0.20 to 3.70 g is right", test.fault());
  }

  @Test
  void wrongSignFails() {
    SelfTest test = new SelfTest();
    assertEquals(SelfTest.Verdict.FAILED, run(test, 12, new double[] {0.9, 0.9, 1.5}, 0.003));
    assertTrue(test.fault().contains("moved y by"), test.fault());
  }

  @Test
  void coachUnderWayGivesNoVerdict() {
    SelfTest test = new SelfTest();
    assertEquals(SelfTest.Verdict.INCONCLUSIVE, run(test, 12, new double[] {0, 0, 0}, 0.2));
  }

  @Test
  void tooFewSamplesGiveNoVerdict() {
    SelfTest test = new SelfTest();
    assertEquals(SelfTest.Verdict.INCONCLUSIVE, run(test, 5, new double[] {0.9, -0.9, 1.5}, 0.003));
    assertEquals(SelfTest.Verdict.INCONCLUSIVE, run(test, 0, new double[3], 0));
  }
}
