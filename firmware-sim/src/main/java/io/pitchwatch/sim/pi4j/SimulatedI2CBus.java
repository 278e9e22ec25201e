package io.pitchwatch.sim.pi4j;

import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CBusBase;
import com.pi4j.io.i2c.I2CConfig;
import io.pitchwatch.sim.bus.Outcome;
import io.pitchwatch.sim.bus.SimulatedBus;
import io.pitchwatch.sim.bus.Slice;
import io.pitchwatch.sim.scenario.Simulation;
import java.io.IOException;
import java.util.concurrent.Callable;

/**
 * A simulated bus behind Pi4J's lock. What fails on the wire fails as it does with Pi4J's own
 * linuxfs provider: a Pi4JException whose innermost cause is an IOException with the kernel's
 * words.
 */
final class SimulatedI2CBus extends I2CBusBase {

  private final Simulation simulation;

  SimulatedI2CBus(I2CConfig config, Simulation simulation) {
    super(config);
    this.simulation = simulation;
  }

  @Override
  public <R> R execute(I2C i2c, Callable<R> action) {
    return _execute(i2c, action);
  }

  /** One transfer under the lock. */
  void transfer(I2C i2c, Slice out, Slice in) {
    execute(
        i2c,
        () -> {
          SimulatedBus wires = simulation.bus(bus).orElseThrow();
          complete(i2c, wires.transfer(i2c.device(), out, in));
          return 0;
        });
  }

  private static void complete(I2C i2c, Outcome outcome) {
    String words =
        switch (outcome) {
          case DONE -> "";
          case NO_ACKNOWLEDGE -> "Remote I/O error";
          case STUCK -> "Device or resource busy";
          case TIMED_OUT -> "Connection timed out";
        };
    if (!words.isEmpty()) {
      throw new Pi4JException(
          "Failed to execute action for device " + i2c.device() + " on bus " + i2c.bus(),
          new IOException(words));
    }
  }
}
