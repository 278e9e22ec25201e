package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.store.Kept;
import java.util.ArrayList;
import java.util.List;

/** Puts the sensors of a config at their places. */
final class SensorPosts {

  private SensorPosts() {}

  static List<SensorPost> of(Config config, Pi4jBus buses, Kept kept) {
    List<SensorPost> posts = new ArrayList<>();
    for (Config.Sensor sensor : config.sensors()) {
      Chip chip = Chip.of(sensor.chip().word());
      SensorPost post =
          new SensorPost(
              sensor.id(),
              chip.driver(buses.at(sensor.bus(), sensor.address())),
              sensor.mounting());
      kept.zero(sensor.id()).ifPresent(post::use);
      posts.add(post);
    }
    return posts;
  }
}
