package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Mpu6050Test {

  private static final Part QUIET = Part.mpu6050().withNoise(Axes.ZERO);

  private static Bench quiet() {
    return Bench.mpu6050(QUIET, Still.FLAT);
  }

  /** Awake, 100 Hz, 21 Hz filter. */
  private static Bench awake(Surroundings surroundings) {
    Bench bench = Bench.mpu6050(QUIET, surroundings);
    bench.write(0x6B, 0x01);
    bench.write(0x1A, 4);
    bench.write(0x19, 9);
    return bench;
  }

  /** RM-MPU-6000A-00 Rev. 4.2, s. 3: all registers reset to 0 but these two. */
  @ParameterizedTest
  @CsvSource({"0x6B, 0x40", "0x75, 0x68", "0x19, 0", "0x1A, 0", "0x1C, 0", "0x23, 0", "0x6A, 0"})
  void registersReset(String register, String value) {
    assertEquals(Integer.decode(value), quiet().read(Integer.decode(register)));
  }

  @Test
  void agreesWithTheFactFile() {
    Facts facts = new Facts("mpu6050.csv");
    assertEquals(List.of(Mpu6050.ADDRESS, Mpu6050.ALTERNATE_ADDRESS), facts.hexes("i2c_address"));
    Bench bench = awake(Still.FLAT);
    int id = facts.hexes("id_register").get(0);
    assertEquals(facts.hexes("id_value").get(0), bench.read(id));
    List<Double> perG = facts.numbers("sensitivity");
    for (int range = 0; range < 4; range++) {
      bench.write(0x1C, range << 3);
      bench.pass(100 * Bench.MILLISECOND);
      assertEquals(perG.get(2 * range + 1), bench.words16(0x3B, 3)[2]);
    }
    assertEquals(Mpu6050Fifo.SIZE, facts.numbers("fifo_depth").get(0));
    assertEquals(facts.numbers("noise_density").get(0), Part.mpu6050().noiseUgPerRootHz().x());
  }

  @Test
  void sleepsUntilWoken() {
    Bench bench = quiet();
    bench.pass(Bench.SECOND);
    assertArrayEquals(new int[] {0, 0, 0}, bench.words16(0x3B, 3));
    bench.write(0x6B, 0x01);
    bench.pass(100 * Bench.MILLISECOND);
    assertArrayEquals(new int[] {0, 0, 16384}, bench.words16(0x3B, 3));
    assertEquals(1, bench.read(0x3A) & 1);
    assertEquals(0, bench.read(0x3A) & 1, "cleared by reading");
  }

  @Test
  void fifoHoldsWhatIsSelectedInRegisterOrder() {
    Bench bench = awake(new Still(0.5, -0.25, 1, 36.53));
    bench.write(0x23, 0x88);
    bench.write(0x6A, 0x40);
    bench.pass(70 * Bench.MILLISECOND);
    int[] count = bench.words16(0x72, 1);
    assertNotEquals(0, count[0]);
    assertEquals(0, count[0] % 8);
    assertArrayEquals(new int[] {8192, -4096, 16384, 0}, bench.words16(0x74, 4));
    assertEquals(count[0] - 8, bench.words16(0x72, 1)[0]);
  }

  @Test
  void fullFifoLosesItsAlignment() {
    Bench bench = awake(new Still(0.5, -0.25, 1, 25));
    bench.write(0x23, 0x08);
    bench.write(0x6A, 0x40);
    bench.pass(10 * Bench.SECOND);
    assertEquals(1024, bench.words16(0x72, 1)[0]);
    assertEquals(0x10, bench.read(0x3A) & 0x10);
    assertEquals(0, bench.read(0x3A) & 0x10);
    // 1024 is not a multiple of 6: what is left begins with y.
    assertArrayEquals(new int[] {-4096, 16384, 8192}, bench.words16(0x74, 3));
    bench.write(0x6A, 0x44);
    assertEquals(0, bench.words16(0x72, 1)[0]);
  }

  @Test
  void emptyFifoRepeatsItsLastByte() {
    Bench bench = awake(Still.FLAT);
    bench.write(0x23, 0x08);
    bench.write(0x6A, 0x40);
    bench.pass(55 * Bench.MILLISECOND);
    bench.write(0x6A, 0x00);
    int bytes = bench.words16(0x72, 1)[0];
    byte[] read = bench.read(0x74, bytes + 3);
    assertEquals(read[bytes - 1], read[bytes + 2]);
  }

  @Test
  void dividerSetsThePace() {
    for (int divider : new int[] {0, 4, 9, 99}) {
      Bench bench = quiet();
      bench.write(0x6B, 0x01);
      bench.pass(Bench.SECOND);
      bench.write(0x1A, 3);
      bench.write(0x19, divider);
      bench.write(0x23, 0x08);
      bench.write(0x6A, 0x40);
      bench.pass((1 + divider) * Bench.MILLISECOND * 21 / 2);
      assertEquals(60, bench.words16(0x72, 1)[0], "divider " + divider);
    }
  }

  /** T = raw/340 + 36.53; −521 at 35 degrees (PS-MPU-6000A-00 Rev. 3.4, p. 14). */
  @ParameterizedTest
  @CsvSource({"36.53, 0", "35, -521", "0, -12420"})
  void thermometerRises(double celsius, int steps) {
    Bench bench = awake(new Still(0, 0, 1, celsius));
    bench.pass(100 * Bench.MILLISECOND);
    assertEquals(steps, bench.words16(0x41, 1)[0], 1);
  }

  @Test
  void selfTestAnswersNearTheFactoryTrim() {
    Bench bench = awake(Still.FLAT);
    bench.write(0x1C, 0x10);
    bench.pass(100 * Bench.MILLISECOND);
    int[] before = bench.words16(0x3B, 3);
    bench.write(0x1C, 0xF0);
    bench.pass(100 * Bench.MILLISECOND);
    int[] during = bench.words16(0x3B, 3);
    byte[] trim = bench.read(0x0D, 4);
    for (int axis = 0; axis < 3; axis++) {
      int code = (trim[axis] >> 5 & 7) << 2 | (trim[3] >> (4 - 2 * axis) & 3);
      double factory = 4096 * 0.34 * Math.pow(0.92 / 0.34, (code - 1) / 30.0);
      assertEquals(factory, during[axis] - before[axis], 0.14 * factory, "axis " + axis);
    }
  }

  @Test
  void deviceResetPutsItToSleep() {
    Bench bench = awake(Still.FLAT);
    bench.write(0x6B, 0x80);
    assertEquals(0x40, bench.read(0x6B));
    assertEquals(0, bench.read(0x19));
  }

  @Test
  void longSilenceCostsNoMoreThanAFullFifo() {
    Bench bench = awake(Still.FLAT);
    bench.write(0x23, 0x08);
    bench.write(0x6A, 0x40);
    bench.pass(100L * 365 * 86400 * Bench.SECOND / 10);
    long before = System.nanoTime();
    bench.read(0x75);
    assertTrue(System.nanoTime() - before < Bench.SECOND);
  }
}
