package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.world.CoachWorld;
import java.util.List;

/**
 * What happens in a scenario.
 *
 * @param world to the coach
 * @param switches to its buses and chips, in order of time
 * @param due around the service, in order of time
 */
record Script(CoachWorld world, List<Switch> switches, List<Due> due) {

  /** Copies the lists. */
  Script {
    switches = List.copyOf(switches);
    due = List.copyOf(due);
  }
}
