package io.pitchwatch.sim.pi4j;

import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.io.i2c.I2CProviderBase;
import io.pitchwatch.sim.scenario.ScenarioReading;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * Stands where the simulated coach would if its scenario had been understood, and says what is
 * wrong with it. A plugin cannot: Pi4J logs what it throws and goes on without it.
 */
final class RefusingI2CProvider extends I2CProviderBase
    implements LongConsumer, Function<String, String> {

  private final ScenarioReading.Refused refusal;

  RefusingI2CProvider(ScenarioReading.Refused refusal) {
    super(SimulatedI2CProvider.ID, "I2C of a coach that could not be simulated");
    this.refusal = refusal;
  }

  /**
   * Never opens anything.
   *
   * @throws Pi4JException always, with everything that is wrong with the scenario
   */
  @Override
  public I2C create(I2CConfig config) {
    throw new Pi4JException(words());
  }

  /** Does nothing: there is no time without a scenario. */
  @Override
  public void accept(long nanos) {}

  /** What is wrong with the scenario, whatever is asked. */
  @Override
  public String apply(String question) {
    return words();
  }

  private String words() {
    return "error scenario refused\n" + refusal;
  }
}
