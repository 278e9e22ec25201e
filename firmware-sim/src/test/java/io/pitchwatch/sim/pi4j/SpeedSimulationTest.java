package io.pitchwatch.sim.pi4j;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CProvider;
import java.util.function.LongConsumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How fast scenarios go by while every sample of 100 Hz is read through Pi4J and the registers;
 * printed, and run only with -Dpitchwatch.full=true.
 */
class SpeedSimulationTest {

  private static final long DAY_NANOS = 86_400_000_000_000L;
  private static final long POLL_NANOS = 200_000_000L;

  @ParameterizedTest
  @ValueSource(strings = {"level-night", "season-on-asphalt", "rain-on-the-meadow", "busy-family"})
  void aDayGoesByTwoThousandTimesFaster(String scenario) {
    assumeTrue(Boolean.getBoolean("pitchwatch.full"), "only with -Dpitchwatch.full=true");
    Context context =
        Pi4J.newContextBuilder()
            .autoDetectProviders()
            .property(SimulationPlugin.SCENARIO, scenario)
            .build();
    I2CProvider provider = context.provider(SimulatedI2CProvider.ID);
    LongConsumer clock = (LongConsumer) provider;
    I2C chip = provider.create(I2C.newConfigBuilder(context).id("c").bus(1).device(0x53).build());
    clock.accept(0);
    chip.writeRegister(0x31, (byte) 0x08);
    chip.writeRegister(0x38, (byte) 0x80);
    chip.writeRegister(0x2D, (byte) 0x08);
    byte[] data = new byte[6];
    long samples = 0;
    long startNanos = System.nanoTime();
    for (long now = POLL_NANOS; now <= DAY_NANOS; now += POLL_NANOS) {
      clock.accept(now);
      for (int left = chip.readRegister(0x39) & 0x3f; left > 0; left--) {
        chip.readRegister(0x32, data, 0, 6);
        samples++;
      }
    }
    double tookNanos = System.nanoTime() - startNanos;
    context.shutdown();
    System.out.printf(
        "%s: %d samples, %.0f ns each, %.0f times real time%n",
        scenario, samples, tookNanos / samples, DAY_NANOS / tookNanos);
    assertTrue(DAY_NANOS / tookNanos > 2000);
  }
}
