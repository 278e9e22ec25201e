package io.pitchwatch.mqtt;

import io.pitchwatch.coach.Coach;
import java.util.List;

/**
 * What stands behind the tree.
 *
 * @param coach as its owner described it
 * @param sensors their names, in the order of the reports
 * @param version of this program
 */
public record Device(Coach coach, List<String> sensors, String version) {

  /** Copies the list. */
  public Device {
    sensors = List.copyOf(sensors);
  }
}
