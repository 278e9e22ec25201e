package io.pitchwatch.sim.pi4j;

import com.pi4j.context.ContextProperties;
import com.pi4j.extension.Plugin;
import com.pi4j.extension.PluginService;
import io.pitchwatch.sim.scenario.Scenario;
import io.pitchwatch.sim.scenario.ScenarioReading;

/**
 * Registers the simulated I2C provider with a Pi4J context that names a scenario in its property
 * {@value #SCENARIO}: the path of a TOML file, or the name of a built-in scenario. On a real coach
 * the property is absent, and nothing is registered.
 */
public final class SimulationPlugin implements Plugin {

  /** Context property that names the scenario. */
  public static final String SCENARIO = "pitchwatch.sim.scenario";

  /** Registers the provider if a scenario is named; one that says why not if it is refused. */
  @Override
  public void initialize(PluginService service) {
    ContextProperties properties = service.context().properties();
    if (!properties.has(SCENARIO)) {
      return;
    }
    ScenarioReading reading = Scenario.read(properties.get(SCENARIO));
    if (reading instanceof ScenarioReading.Understood understood) {
      service.register(new SimulatedI2CProvider(understood.scenario()));
    } else if (reading instanceof ScenarioReading.Refused refused) {
      service.register(new RefusingI2CProvider(refused));
    }
  }
}
