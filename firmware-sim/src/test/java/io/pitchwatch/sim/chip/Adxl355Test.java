package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Adxl355Test {

  private static final Part QUIET = Part.adxl355().withNoise(Axes.ZERO);

  private static Bench quiet() {
    return Bench.adxl355(QUIET, Still.FLAT);
  }

  /** ADXL355 reset values: fact file and details of Linux' driver; POWER_CTL from memory. */
  @ParameterizedTest
  @CsvSource({
    "0x00, 0xAD",
    "0x01, 0x1D",
    "0x02, 0xED",
    "0x05, 0",
    "0x28, 0",
    "0x29, 0x60",
    "0x2C, 0x81",
    "0x2D, 0x01",
    "0x2E, 0"
  })
  void registersReset(String register, String value) {
    assertEquals(Integer.decode(value), quiet().read(Integer.decode(register)));
  }

  @Test
  void agreesWithTheFactFile() {
    Facts facts = new Facts("adxl355.csv");
    assertEquals(List.of(Adxl355.ADDRESS, Adxl355.ALTERNATE_ADDRESS), facts.hexes("i2c_address"));
    Bench bench = quiet();
    List<Integer> ids = facts.hexes("id_register");
    for (int i = 0; i + 1 < ids.size(); i += 2) {
      assertEquals(ids.get(i + 1), bench.read(ids.get(i)));
    }
    String[] ranges = {"sensitivity_2g", "sensitivity_4g", "sensitivity_8g"};
    for (int range = 0; range < 3; range++) {
      double typical = facts.numbers(ranges[range]).get(1);
      bench.write(0x2C, 0x80 | (range + 1));
      bench.write(0x2D, 0);
      bench.pass(20 * Bench.MILLISECOND);
      assertEquals(typical, bench.words20(0x08)[2]);
      bench.write(0x2D, 1);
    }
    assertTrue(facts.text("fifo_depth").startsWith(Adxl355Fifo.PLACES + " locations"));
  }

  @Test
  void filterCodeSetsThePace() {
    Bench bench = quiet();
    for (int code = 0; code <= 10; code++) {
      bench.write(0x2D, 1);
      bench.write(0x2F, 0x52);
      bench.write(0x28, code);
      bench.write(0x2D, 0);
      double periodNanos = 1e9 / 4000 * (1 << code);
      bench.pass(Math.round(10e6 + 5.5 * periodNanos));
      assertEquals(15, bench.read(0x05), "code " + code);
    }
  }

  @Test
  void fifoMarksXAndSaysWhenItIsEmpty() {
    Bench bench = Bench.adxl355(QUIET, new Still(0.5, -0.25, 1, 25));
    bench.write(0x28, 5);
    bench.write(0x2D, 0);
    bench.pass(30 * Bench.MILLISECOND);
    assertEquals(6, bench.read(0x05));
    byte[] bytes = bench.read(0x11, 21);
    int[] marks = new int[7];
    for (int i = 0; i < 7; i++) {
      marks[i] = bytes[3 * i + 2] & 3;
    }
    assertArrayEquals(new int[] {1, 0, 0, 1, 0, 0, 2}, marks);
    int y = (bytes[3] << 24 | (bytes[4] & 0xff) << 16 | (bytes[5] & 0xf0) << 8) >> 12;
    assertEquals(-0.25 * 256000, y);
    assertEquals(0, bench.read(0x05));
  }

  @Test
  void fullFifoDropsTheOldestSetAndSaysSo() {
    Bench bench = quiet();
    bench.write(0x28, 5);
    bench.write(0x2D, 0);
    bench.pass(Bench.SECOND);
    assertEquals(96, bench.read(0x05));
    assertEquals(0x07, bench.read(0x04), "overrun, full, ready");
    assertEquals(0x02, bench.read(0x04), "full still");
    assertEquals(1, bench.read(0x11, 3)[2] & 1, "an x comes first");
  }

  @Test
  void offsetsCountSixteenStepsEach() {
    Bench bench = quiet();
    bench.write(0x1E, 0x01, 0x00, 0xFF, 0xFF);
    bench.write(0x2D, 0);
    bench.pass(20 * Bench.MILLISECOND);
    assertArrayEquals(new int[] {4096, -16, 256000}, bench.words20(0x08));
  }

  @Test
  void saturatesAtTwentyBits() {
    Bench bench = Bench.adxl355(QUIET, new Still(3, -3, 0, 25));
    bench.write(0x2D, 0);
    bench.pass(20 * Bench.MILLISECOND);
    assertArrayEquals(new int[] {(1 << 19) - 1, -(1 << 19), 0}, bench.words20(0x08));
  }

  /** -9.05 steps a kelvin, 1885 at 25 degrees (details of Linux' driver and the datasheet). */
  @ParameterizedTest
  @CsvSource({"25, 1885", "45, 1704", "-10, 2202"})
  void thermometerFalls(double celsius, int steps) {
    Bench bench = Bench.adxl355(QUIET, new Still(0, 0, 1, celsius));
    bench.write(0x2D, 0);
    bench.pass(20 * Bench.MILLISECOND);
    byte[] bytes = bench.read(0x06, 2);
    assertEquals(steps, bytes[0] << 8 | (bytes[1] & 0xff), 1);
  }

  @Test
  void selfTestPushesOnlyWhenForced() {
    Bench bench = quiet();
    bench.write(0x2D, 0);
    bench.write(0x2E, 1);
    bench.pass(20 * Bench.MILLISECOND);
    assertArrayEquals(new int[] {0, 0, 256000}, bench.words20(0x08));
    bench.write(0x2C, 0x83);
    bench.write(0x2E, 3);
    bench.pass(20 * Bench.MILLISECOND);
    int[] words = bench.words20(0x08);
    assertEquals(0.3 * 64000, words[0], 1);
    assertEquals(2.5 * 64000, words[2], 1);
  }

  @Test
  void resetTakesFiveMillisecondsAndBringsTheShadowBack() {
    Bench bench = quiet();
    bench.pass(Bench.SECOND);
    byte[] shadow = bench.read(0x50, 5);
    bench.write(0x28, 7);
    bench.write(0x2F, 0x52);
    assertEquals(0x10, bench.read(0x04) & 0x10);
    bench.pass(5 * Bench.MILLISECOND);
    assertEquals(0, bench.read(0x04) & 0x10);
    assertEquals(0, bench.read(0x28));
    assertArrayEquals(shadow, bench.read(0x50, 5));
  }

  @Test
  void highPassTakesGravityAway() {
    Bench bench = quiet();
    bench.write(0x28, 0x15);
    bench.write(0x2D, 0);
    for (int i = 0; i < 300; i++) {
      bench.pass(100 * Bench.MILLISECOND);
      bench.read(0x04);
    }
    assertEquals(0, bench.words20(0x08)[2], 2560);
  }
}
