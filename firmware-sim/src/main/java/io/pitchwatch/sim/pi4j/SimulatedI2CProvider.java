package io.pitchwatch.sim.pi4j;

import com.pi4j.exception.Pi4JException;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CConfig;
import com.pi4j.io.i2c.I2CProviderBase;
import io.pitchwatch.sim.scenario.Scenario;
import io.pitchwatch.sim.scenario.Simulation;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * An I2C provider whose buses lead to a simulated coach.
 *
 * <p>Beside what every provider does it can be asked things, through JDK types only, so that
 * whoever rehearses a service need not be compiled against the simulator:
 *
 * <ul>
 *   <li>as a {@link LongConsumer}: sets scenario time, nanoseconds since its beginning; from then
 *       on it stands until set again. Before, it runs by itself, and 0 is when this provider was
 *       made.
 *   <li>as a {@link Function} from question to answer: see {@link Questions}.
 * </ul>
 */
public final class SimulatedI2CProvider extends I2CProviderBase
    implements LongConsumer, Function<String, String> {

  /** The provider's id. */
  public static final String ID = "pitchwatch-sim-i2c";

  private final ScenarioClock clock = new ScenarioClock();
  private final Simulation simulation;
  private final Questions questions;
  private final Map<Integer, SimulatedI2CBus> buses = new ConcurrentHashMap<>();

  /**
   * A provider for one coach; scenario time begins to run now.
   *
   * @param scenario what happens to the coach
   */
  public SimulatedI2CProvider(Scenario scenario) {
    super(ID, "I2C of a simulated coach");
    simulation = new Simulation(scenario, clock, this::pass);
    questions = new Questions(simulation);
  }

  /** Above the others: whoever names a scenario wants the simulated coach. */
  @Override
  public int getPriority() {
    return 1000;
  }

  /**
   * Opens a chip's address on a bus; whether a chip is there shows at the first transfer.
   *
   * @throws Pi4JException if the scenario has no such bus
   */
  @Override
  public synchronized I2C create(I2CConfig config) {
    int number = config.bus();
    if (simulation.bus(number).isEmpty()) {
      throw new Pi4JException("Failed to initialize I2C bus " + number);
    }
    SimulatedI2CBus bus =
        buses.computeIfAbsent(number, n -> new SimulatedI2CBus(config, simulation));
    I2C i2c = new SimulatedI2C(this, config, bus);
    this.context.registry().add(i2c);
    return i2c;
  }

  /**
   * Sets scenario time.
   *
   * @param nanos since the scenario's beginning; not before an instant that was already reached
   * @throws IllegalArgumentException if it goes back
   */
  @Override
  public void accept(long nanos) {
    clock.set(nanos);
  }

  /** Answers a question of {@link Questions}. */
  @Override
  public String apply(String question) {
    return questions.answer(question);
  }

  private void pass(long nanos) {
    if (clock.runsByItself()) {
      LockSupport.parkNanos(nanos);
    }
  }
}
