package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.bus.BusFaults;
import io.pitchwatch.sim.chip.Chip;
import io.pitchwatch.sim.chip.Flaws;
import java.util.List;

/**
 * What can be broken in a simulation.
 *
 * @param buses faults of each bus
 * @param chips flaws of each chip, in the order of the scenario's sensors
 * @param supplied the chips themselves, in the same order
 */
public record Breakables(List<BusFaults> buses, List<Flaws> chips, List<Chip> supplied) {

  /** Copies the lists. */
  public Breakables {
    buses = List.copyOf(buses);
    chips = List.copyOf(chips);
    supplied = List.copyOf(supplied);
  }

  /** Mends everything. */
  public void clear() {
    buses.forEach(BusFaults::clear);
    chips.forEach(Flaws::clear);
  }
}
