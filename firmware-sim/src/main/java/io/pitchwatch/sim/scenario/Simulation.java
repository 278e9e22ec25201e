package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.bus.BusFaults;
import io.pitchwatch.sim.bus.SimulatedBus;
import io.pitchwatch.sim.chip.Chip;
import io.pitchwatch.sim.chip.Flaws;
import io.pitchwatch.sim.world.Attitude;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;

/** A scenario brought to life: buses with chips on them, and a clock that someone else turns. */
public final class Simulation {

  private static final double NANOS_PER_SECOND = 1e9;

  private final Scenario scenario;
  private final LongSupplier nowNanos;
  private final Map<Integer, SimulatedBus> buses = new TreeMap<>();
  private final Breakables breakables;
  private int nextSwitch;
  private int nextDue;

  /**
   * Freshly powered chips in a coach.
   *
   * @param scenario what happens
   * @param nowNanos scenario time, nanoseconds, never going back
   * @param wait lets a stretched bus clock pass; does nothing on virtual time
   */
  public Simulation(Scenario scenario, LongSupplier nowNanos, LongConsumer wait) {
    this.scenario = scenario;
    this.nowNanos = nowNanos;
    List<Flaws> flaws = new ArrayList<>();
    List<BusFaults> faults = new ArrayList<>();
    List<Chip> chips = new ArrayList<>();
    for (SensorSetup sensor : scenario.sensors()) {
      long seed = scenario.seed() + 1000L * (chips.size() + 1);
      Flaws wrong = new Flaws(seed + 1);
      Chip chip = sensor.build(scenario.world(), wrong, nowNanos, seed);
      flaws.add(wrong);
      chips.add(chip);
      buses
          .computeIfAbsent(sensor.bus(), number -> newBus(number, faults, wait))
          .attach(sensor.address(), chip.onBus());
    }
    breakables = new Breakables(faults, flaws, chips);
  }

  private SimulatedBus newBus(int number, List<BusFaults> faults, LongConsumer wait) {
    BusFaults wrong = new BusFaults(scenario.seed() + number);
    faults.add(wrong);
    return new SimulatedBus(wrong, wait);
  }

  /** The scenario that is played. */
  public Scenario scenario() {
    return scenario;
  }

  /** Scenario time, seconds. */
  public double nowS() {
    return nowNanos.getAsLong() / NANOS_PER_SECOND;
  }

  /**
   * A bus, its faults brought up to date.
   *
   * @param number as in the scenario
   * @return empty if the coach has no such bus
   */
  public Optional<SimulatedBus> bus(int number) {
    catchUp();
    return Optional.ofNullable(buses.get(number));
  }

  /** Brings faults that have come or gone since the last call about. */
  public synchronized void catchUp() {
    List<Switch> switches = scenario.script().switches();
    double nowS = nowS();
    while (nextSwitch < switches.size() && switches.get(nextSwitch).atS() <= nowS) {
      switches.get(nextSwitch++).action().accept(breakables);
    }
  }

  /** What can be broken by hand. */
  public Breakables breakables() {
    return breakables;
  }

  /** How the floor truly lies now. */
  public Attitude truth() {
    return scenario.world().seat(0).attitude(nowS());
  }

  /** What fell due around the service since the last call. */
  public synchronized List<Due> due() {
    List<Due> all = scenario.script().due();
    int first = nextDue;
    double nowS = nowS();
    while (nextDue < all.size() && all.get(nextDue).atS() <= nowS) {
      nextDue++;
    }
    return all.subList(first, nextDue);
  }
}
