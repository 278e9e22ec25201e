package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The emulator against the datasheet's register map and a real part on a logic analyser. */
class Adxl345ReferenceTest {

  private static final double PLACES = 256;

  /** ADXL345 datasheet Rev. E, table 19 "Register map", reset values (from memory). */
  @ParameterizedTest
  @CsvSource({
    "0x00, 0xE5",
    "0x1D, 0",
    "0x1E, 0",
    "0x1F, 0",
    "0x20, 0",
    "0x21, 0",
    "0x22, 0",
    "0x23, 0",
    "0x24, 0",
    "0x25, 0",
    "0x26, 0",
    "0x27, 0",
    "0x28, 0",
    "0x29, 0",
    "0x2A, 0",
    "0x2B, 0",
    "0x2C, 0x0A",
    "0x2D, 0",
    "0x2E, 0",
    "0x2F, 0",
    "0x30, 0x02",
    "0x31, 0",
    "0x32, 0",
    "0x33, 0",
    "0x34, 0",
    "0x35, 0",
    "0x36, 0",
    "0x37, 0",
    "0x38, 0",
    "0x39, 0"
  })
  void registersResetAsTheMapSays(String register, String value) {
    assertEquals(Integer.decode(value), Bench.quiet().read(Integer.decode(register)));
  }

  @Test
  void agreesWithTheFactFile() {
    Facts facts = new Facts("adxl345.csv");
    List<Integer> addresses = facts.hexes("i2c_address");
    assertEquals(List.of(Adxl345.ADDRESS, Adxl345.ALTERNATE_ADDRESS), addresses);
    Bench bench = Bench.quiet();
    int id = facts.hexes("id_register").get(0);
    assertEquals(facts.hexes("id_value").get(0), bench.read(id));
    assertEquals(facts.hexes("odr_register").get(1), bench.read(0x2C), "default rate");
    List<Double> perG = facts.numbers("sensitivity_10bit");
    for (int range = 0; range < 4; range++) {
      assertEquals(perG.get(2 * range + 1), wordAtOneG(range), "range " + perG.get(2 * range));
      assertEquals(facts.numbers("sensitivity_full_res").get(1), wordAtOneG(8 | range));
    }
    List<Double> offsetMg = facts.numbers("offset_registers");
    assertTrue(offsetMg.contains(15.6), offsetMg + "");
    assertEquals(15.6, 1000 * 4 / PLACES, 0.05, "an offset step moves the word by four");
  }

  @Test
  void selfTestOfATypicalPartLiesWithinTheFactFilesLimits() {
    Facts facts = new Facts("adxl345.csv");
    Axes change = Part.adxl345().selfTestG();
    String[] items = {"self_test_x", "self_test_y", "self_test_z"};
    for (int axis = 0; axis < 3; axis++) {
      List<Double> limits = facts.numbers(items[axis]);
      assertTrue(change.of(axis) >= limits.get(0) && change.of(axis) <= limits.get(1), items[axis]);
    }
  }

  /** What a real part measured, felt by the emulator set up alike, comes out in the same bytes. */
  @Test
  void answersTheBytesOfTheRealPart() {
    for (String line : SharedFiles.lines("chips/adxl345-wire-capture/decoded_axis.txt")) {
      List<Integer> real = capturedBytes(line).subList(1, 7);
      double[] g = new double[3];
      for (int axis = 0; axis < 3; axis++) {
        g[axis] = (short) (real.get(2 * axis) | real.get(2 * axis + 1) << 8) / PLACES;
      }
      Bench bench = Bench.adxl345(Bench.QUIET, new Still(g[0], g[1], g[2], 25));
      bench.write(0x31, 0x08);
      bench.write(0x2D, 0x08);
      bench.pass(12 * Bench.MILLISECOND);
      byte[] bytes = bench.read(0x32, 6);
      for (int i = 0; i < 6; i++) {
        assertEquals(real.get(i), bytes[i] & 0xff, line);
      }
    }
  }

  /** Registers 0x1D to 0x31 and the FIFO's of a part that measured unread for a while. */
  @Test
  void readsAsTheRealPartDidRegisterByRegister() {
    Bench bench = Bench.quiet();
    bench.write(0x31, 0x08);
    bench.write(0x2D, 0x08);
    bench.pass(Bench.SECOND);
    int compared = 0;
    for (String line : SharedFiles.lines("chips/adxl345-wire-capture/decoded_registers.txt")) {
      int register = Integer.parseInt(line.split(";", -1)[1].strip().substring(0, 2), 16) & 0x3f;
      boolean factoryTrim = register > 0 && register < 0x1D;
      boolean data = register >= 0x32 && register <= 0x37;
      if (!factoryTrim && !data) {
        assertEquals(capturedBytes(line).get(1), bench.read(register), line);
        compared++;
      }
    }
    assertEquals(0x31 - 0x1D + 1 + 2, compared);
  }

  private static double wordAtOneG(int format) {
    Bench bench = Bench.quiet();
    bench.write(0x31, format);
    bench.write(0x2D, 0x08);
    bench.pass(12 * Bench.MILLISECOND);
    int[] data = bench.data();
    assertArrayEquals(new int[] {0, 0, data[2]}, data);
    return data[2];
  }

  private static List<Integer> capturedBytes(String line) {
    List<Integer> bytes = new ArrayList<>();
    for (String hex : line.split(";", -1)[2].strip().split(" ", -1)) {
      bytes.add(Integer.parseInt(hex, 16));
    }
    return bytes;
  }
}
