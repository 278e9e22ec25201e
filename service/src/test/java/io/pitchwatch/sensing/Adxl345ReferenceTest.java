package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl345Registers.*;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The register map against the data sheet's facts, and the decoding against a real part on a logic
 * analyser.
 */
class Adxl345ReferenceTest {

  private static final String FACTS = "adxl345.csv";
  private static final String CAPTURE = "chips/adxl345-wire-capture/";

  /** First row of the capture and its values: SOURCE.md beside it. */
  @Test
  void wireCaptureDecodesToItsStatedValues() {
    byte[] first = dataBytes(SharedFiles.lines(CAPTURE + "decoded_axis.txt").get(1));
    assertArrayEquals(new int[] {-49, 233, -111}, decode(first));
    double[] g = new double[3];
    double norm = 0;
    for (int axis = 0; axis < 3; axis++) {
      g[axis] = decode(first)[axis] / LSB_PER_G;
      norm += g[axis] * g[axis];
    }
    assertArrayEquals(new double[] {-0.191, 0.910, -0.434}, g, 0.0005);
    assertEquals(1.026, Math.sqrt(norm), 0.0005);
  }

  /** A part at rest: all eleven rows within a few steps of one another. */
  @Test
  void everyRowOfTheCaptureIsTheSameRest() {
    int rows = 0;
    for (String line : SharedFiles.lines(CAPTURE + "decoded_axis.txt")) {
      if (!line.startsWith("#")) {
        int[] counts = decode(dataBytes(line));
        assertEquals(-48.5, counts[0], 2.5, line);
        assertEquals(235, counts[1], 5, line);
        assertEquals(-111, counts[2], 3, line);
        rows++;
      }
    }
    assertEquals(11, rows);
  }

  /** The part of the capture was measuring at 100 Hz in full resolution; SOURCE.md names these. */
  @Test
  void registersOfTheCaptureReadAsTheirNamesSay() {
    Map<Integer, Integer> seen = new HashMap<>();
    for (String line : SharedFiles.lines(CAPTURE + "decoded_registers.txt")) {
      if (!line.startsWith("#")) {
        String[] parts = line.split(";", -1);
        int register = Integer.parseInt(parts[1].trim().substring(0, 2), 16) & 0x3F;
        seen.put(register, Integer.parseInt(parts[2].trim().substring(3, 5), 16));
      }
    }
    assertEquals(RATE_100_HZ, seen.get(BW_RATE));
    assertEquals(POWER_MEASURE, seen.get(POWER_CTL));
    assertEquals(FORMAT_FULL_RES, seen.get(DATA_FORMAT));
    assertEquals(FIFO_BYPASS, seen.get(FIFO_CTL));
    assertEquals(0x83, seen.get(INT_SOURCE)); // data ready, watermark, overrun
    assertEquals(1 << 7, INT_DATA_READY);
  }

  private static byte[] dataBytes(String line) {
    String[] hex = line.split(";", -1)[2].trim().split(" ", -1);
    byte[] bytes = new byte[6];
    for (int i = 0; i < 6; i++) {
      bytes[i] = (byte) Integer.parseInt(hex[i + 1], 16);
    }
    return bytes;
  }

  private static int[] decode(byte[] bytes) {
    return new int[] {signed16(bytes, 0), signed16(bytes, 2), signed16(bytes, 4)};
  }

  @Test
  void identityAndAddressesAreTheFactFiles() {
    FactFile facts = new FactFile(FACTS);
    assertEquals(facts.hex("id_register", 0), DEVID);
    assertEquals(facts.hex("id_value", 0), DEVID_VALUE);
    assertEquals(facts.hexes("i2c_address"), Chip.ADXL345.addresses());
  }

  @Test
  void registersAreTheFactFiles() {
    FactFile facts = new FactFile(FACTS);
    assertEquals(facts.hex("data_registers", 0), DATAX0);
    assertEquals(facts.hex("range_register", 0), DATA_FORMAT);
    assertEquals(facts.hex("odr_register", 0), BW_RATE);
    assertEquals(facts.hex("odr_register", 1), BW_RATE_RESET);
    assertEquals(facts.hex("power_register", 0), POWER_CTL);
    assertEquals(facts.hex("fifo_ctl", 0), FIFO_CTL);
    assertEquals(facts.hex("fifo_status", 0), FIFO_STATUS);
    assertEquals(facts.hex("int_registers", 0), INT_ENABLE);
    assertEquals(facts.hex("int_registers", 2), INT_SOURCE);
    assertEquals(facts.hex("offset_registers", 0), OFSX);
    assertEquals(32, FIFO_DEPTH);
    assertTrue(facts.text("fifo_depth").startsWith("32 "));
  }

  @Test
  void scaleNoiseAndDriftAreTheFactFiles() {
    FactFile facts = new FactFile(FACTS);
    assertTrue(facts.text("sensitivity_full_res").contains("256 typ"));
    assertEquals(256, LSB_PER_G);
    assertEquals(facts.number("zero_g_tempco_xy", 0), 1e3 * Adxl345Driver.FACTS.xyTempcoG());
    assertEquals(facts.number("zero_g_tempco_z", 0), 1e3 * Adxl345Driver.FACTS.zTempcoG());
    assertTrue(facts.text("zero_g_offset_xy").contains("+150"));
    assertEquals(0.150, Adxl345Driver.FACTS.xyOffsetG());
    assertTrue(facts.text("zero_g_offset_z").contains("+250"));
    assertEquals(0.250, Adxl345Driver.FACTS.zOffsetG());
    // 230 and 282 LSB/g about 256: the data sheet's own 10 %.
    assertEquals((282.0 - 230) / 2 / 256, Adxl345Driver.FACTS.scaleTolerance(), 0.002);
  }

  /** Table 1 at 2.5 V; Table 14: 1.77 and 1.47 at 3.3 V. */
  @Test
  void selfTestLimitsSpanBothSupplies() {
    FactFile facts = new FactFile(FACTS);
    SelfTestLimits limits = Chip.ADXL345.driver(new NoBus()).selfTestLimits();
    List<Double> x = facts.numbers("self_test_x");
    List<Double> y = facts.numbers("self_test_y");
    List<Double> z = facts.numbers("self_test_z");
    assertEquals(x.get(0), limits.xMinG());
    assertEquals(x.get(1) * 1.77, limits.xMaxG(), 1e-9);
    assertEquals(y.get(0) * 1.77, limits.yMinG(), 1e-9);
    assertEquals(y.get(1), limits.yMaxG());
    assertEquals(z.get(0), limits.zMinG());
    assertEquals(z.get(1) * 1.47, limits.zMaxG(), 1e-9);
  }

  /** Table 7: 0.10 Hz at code 0, 100 Hz at 0x0A, 3200 Hz at 0x0F, each twice the one before. */
  @Test
  void ratesDoubleWithEachCode() {
    assertEquals(0.09765625, RATES_HZ[0]);
    assertEquals(100, RATES_HZ[RATE_100_HZ]);
    assertEquals(800, RATES_HZ[RATE_800_HZ]);
    assertEquals(3200, RATES_HZ[15]);
  }

  @Test
  void unknownRangeOrRateIsRefusedWithWhatThereIs() {
    var range =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Adxl345Driver(new NoBus(), new AccelerometerSettings(3, 100)));
    String text = String.valueOf(range.getMessage());
    assertTrue(text.contains("rangeG is 3.0"), text);
    assertTrue(text.contains("16.0"), text);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Adxl345Driver(new NoBus(), new AccelerometerSettings(2, 110)));
  }
}
