package io.pitchwatch.sim.chip;

import io.pitchwatch.sim.bus.Target;

/** A chip on its board: a face to the bus, and a supply that can fail. */
public interface Chip {

  /** Its face to the bus; one and the same each time it matters, since it holds the pointer. */
  Target onBus();

  /** The supply was away and is back: everything is as a power-on reset leaves it. */
  void powerCycle();
}
