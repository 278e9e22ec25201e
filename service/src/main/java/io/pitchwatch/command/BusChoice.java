package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import java.util.Map;

/**
 * Which buses the sensors hang on.
 *
 * @param provider id of Pi4J's provider
 * @param properties handed to it
 */
record BusChoice(String provider, Map<String, String> properties) {

  /** The kernel's buses. */
  static final BusChoice KERNEL = new BusChoice(Pi4jBus.LINUX, Map.of());

  /** The buses of a simulated coach; found through Pi4J's plugin loading. */
  static BusChoice simulated(String scenario) {
    return new BusChoice("pitchwatch-sim-i2c", Map.of("pitchwatch.sim.scenario", scenario));
  }

  Pi4jBus open() {
    return Pi4jBus.open(provider, properties);
  }
}
