package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Mpu6050Registers.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The register map against the facts of data sheet and register map. */
class Mpu6050ReferenceTest {

  private final FactFile facts = new FactFile("mpu6050.csv");

  @Test
  void identityAndAddressesAreTheFactFiles() {
    assertEquals(facts.hex("id_register", 0), WHO_AM_I);
    assertEquals(facts.hex("id_value", 0), WHO_AM_I_VALUE);
    assertEquals(facts.hexes("i2c_address"), Chip.MPU6050.addresses());
  }

  @Test
  void registersAreTheFactFiles() {
    assertEquals(facts.hex("data_registers", 2), TEMP_OUT_H);
    assertEquals(facts.hex("accel_config", 0), ACCEL_CONFIG);
    assertEquals(facts.hex("sample_rate", 0), SMPLRT_DIV);
    assertEquals(facts.hex("dlpf", 0), CONFIG);
    assertEquals(facts.hex("power_register", 0), PWR_MGMT_1);
    assertEquals(facts.hex("power_register", 1), PWR_ASLEEP);
    assertEquals(facts.hex("fifo_registers", 0), FIFO_EN);
    assertEquals(facts.hex("fifo_registers", 1), USER_CTRL);
    assertEquals(facts.hex("fifo_registers", 2), FIFO_COUNT_H);
    assertEquals(facts.hex("fifo_registers", 4), FIFO_R_W);
    assertEquals(facts.number("fifo_depth", 0), FIFO_BYTES);
    assertTrue(facts.text("fifo_registers").contains("D3 ACCEL"));
    assertEquals(1 << 3, FIFO_EN_ACCEL);
    assertTrue(facts.text("fifo_registers").contains("D6 FIFO_EN D2 FIFO_RESET"));
    assertEquals(1 << 6, USER_FIFO_EN);
    assertEquals(1 << 2, USER_FIFO_RESET);
  }

  @Test
  void scaleNoiseAndDriftAreTheFactFiles() {
    assertTrue(facts.text("sensitivity").startsWith("2g 16384"));
    assertEquals(16_384, LSB_PER_G);
    ChipFacts of = Mpu6050Driver.FACTS;
    assertEquals(facts.number("noise_density", 0), 1e6 * of.xyNoiseG(), 1e-9);
    assertTrue(facts.text("zero_g_offset").contains("50 xy"));
    assertEquals(0.050, of.xyOffsetG());
    assertTrue(facts.text("zero_g_offset").contains("80 z"));
    assertEquals(0.080, of.zOffsetG());
    assertTrue(facts.text("zero_g_temp").contains("35 xy"));
    assertEquals(0.5e-3, of.xyTempcoG(), 1e-12);
    assertTrue(facts.text("zero_g_temp").contains("60 z"));
    assertEquals(0.86e-3, of.zTempcoG(), 0.005e-3);
    assertEquals(0.03, of.scaleTolerance());
  }

  /** Product specification, section 6.2: −521 counts at 35 °C. */
  @Test
  void temperatureOfTheSpecificationDecodes() {
    assertEquals(35, temperatureC(signed16(new byte[] {(byte) 0xFD, (byte) 0xF7}, 0)), 0.01);
  }

  /** Ends of the register map's formula: 0.34 g at code 1, 0.92 g at code 31. */
  @Test
  void factoryTrimSpansItsFormula() {
    assertEquals(0.34, factoryChangeG(1), 1e-12);
    assertEquals(0.92, factoryChangeG(31), 1e-12);
  }

  /** The low pass stays below half the rate; bandwidths from memory, as the fact file says. */
  @Test
  void lowPassStaysBelowHalfTheRate() {
    double[] bandwidthHz = {260, 184, 94, 44, 21, 10, 5};
    for (int i = 0; i < RATES_HZ.length; i++) {
      assertTrue(bandwidthHz[FILTERS[i]] <= RATES_HZ[i] / 2, "rate " + RATES_HZ[i]);
    }
  }
}
