package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl355Registers.*;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The register map against the data sheet's facts. */
class Adxl355ReferenceTest {

  private final FactFile facts = new FactFile("adxl355.csv");

  @Test
  void identityAndAddressesAreTheFactFiles() {
    List<Integer> transcribed =
        List.of(DEVID_AD, DEVID_AD_VALUE, DEVID_MST, DEVID_MST_VALUE, PARTID, PARTID_VALUE);
    assertEquals(facts.hexes("id_register").subList(0, 6), transcribed);
    assertEquals(facts.hexes("i2c_address"), Chip.ADXL355.addresses());
  }

  @Test
  void registersAreTheFactFiles() {
    assertEquals(facts.hex("range_register", 0), RANGE);
    assertEquals(facts.hex("filter_register", 0), FILTER);
    assertEquals(facts.hex("power_register", 0), POWER_CTL);
    assertEquals(facts.hex("fifo_registers", 0), FIFO_ENTRIES);
    assertEquals(facts.hex("fifo_registers", 1), FIFO_DATA);
    assertEquals(facts.hex("status_register", 0), STATUS);
    assertTrue(facts.text("status_register").contains("D2 FIFO_OVR"));
    assertEquals(1 << 2, STATUS_FIFO_OVR);
    assertEquals(facts.hex("temperature_registers", 0), TEMP2);
    assertEquals(facts.hex("self_test", 0), SELF_TEST);
    assertEquals(facts.hex("offset_registers", 0), OFFSET_X_H);
    assertTrue(facts.text("fifo_depth").contains("= 32 xyz sets"));
    assertEquals(32, FIFO_SETS);
    assertTrue(facts.text("fifo_word").contains("bit1 = empty, bit0 = X marker"));
    assertEquals(1 << 1, WORD_EMPTY);
    assertEquals(1, WORD_IS_X);
  }

  @Test
  void ratesScaleNoiseAndDriftAreTheFactFiles() {
    double[] rates = facts.numbers("odr_list").stream().mapToDouble(r -> r).limit(11).toArray();
    assertArrayEquals(rates, RATES_HZ, 0.001);
    assertEquals(facts.number("sensitivity_2g", 1), LSB_PER_G);
    assertEquals(facts.number("noise_density", 0), 1e6 * Adxl355Driver.FACTS.xyNoiseG(), 1e-9);
    assertEquals(facts.number("zero_g_offset", 0), -1e3 * Adxl355Driver.FACTS.zOffsetG(), 1e-9);
    assertEquals(0.02, 1e3 * Adxl355Driver.FACTS.xyTempcoG(), 1e-9);
    assertTrue(facts.text("zero_g_tempco").contains("0.02 typ"));
    assertEquals(
        1 - facts.number("sensitivity_2g", 0) / facts.number("sensitivity_2g", 1),
        Adxl355Driver.FACTS.scaleTolerance(),
        1e-9);
    assertEquals(-9.05, TEMPERATURE_LSB_PER_C);
    assertTrue(facts.text("temperature_scale").contains("1885"));
    assertEquals(25, temperatureC(1885));
    assertEquals(24, temperatureC(1894), 0.01);
  }

  /** One g is 256,000 counts of 20 bits, left-justified in three bytes (worked here). */
  @Test
  void twentyBitWordsDecode() {
    assertEquals(256_000, signed20(new byte[] {0x3E, (byte) 0x80, 0x00}, 0));
    assertEquals(-256_000, signed20(new byte[] {(byte) 0xC1, (byte) 0x80, 0x03}, 0));
    assertEquals(-1, signed20(new byte[] {0, (byte) 0xFF, (byte) 0xFF, (byte) 0xF0}, 1));
    assertEquals(524_287, signed20(new byte[] {0x7F, (byte) 0xFF, (byte) 0xFF}, 0));
    assertEquals(-524_288, signed20(new byte[] {(byte) 0x80, 0, 0}, 0));
  }

  @Test
  void selfTestLimitsSpanTheTypicalChange() {
    SelfTestLimits limits = Chip.ADXL355.driver(new NoBus()).selfTestLimits();
    double[] typical = {0.3, 0.3, 1.5};
    assertTrue(facts.text("self_test").contains("x 0.3, y 0.3, z 1.5 typ"));
    double[] least = {limits.xMinG(), limits.yMinG(), limits.zMinG()};
    double[] most = {limits.xMaxG(), limits.yMaxG(), limits.zMaxG()};
    assertArrayEquals(Arrays.stream(typical).map(t -> t / 2).toArray(), least, 1e-9);
    assertArrayEquals(Arrays.stream(typical).map(t -> t * 2).toArray(), most, 1e-9);
  }
}
