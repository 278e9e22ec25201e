package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.config.Config;
import io.pitchwatch.sensing.Adxl355Driver;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.sensing.Mpu6050Driver;
import io.pitchwatch.settling.GroundModel;
import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.FittedSensor;
import java.util.ArrayList;
import java.util.List;

/** Puts the sensors of a config at their places. */
final class SensorPosts {

  private SensorPosts() {}

  /** The sensors, and what their drift is expected to be, for whoever watches the ground. */
  static List<FittedSensor> fitted(Config config) {
    return config.sensors().stream()
        .map(sensor -> new FittedSensor(sensor.id(), groundModel(sensor)))
        .toList();
  }

  private static GroundModel groundModel(Config.Sensor sensor) {
    return switch (sensor.chip()) {
      case ADXL345 -> GroundModel.withoutThermometer();
      // Near level a g of offset is a radian of tilt.
      case ADXL355 -> GroundModel.withThermometer(Adxl355Driver.FACTS.xyTempcoG());
      case MPU6050 -> GroundModel.withThermometer(Mpu6050Driver.FACTS.xyTempcoG());
    };
  }

  static List<SensorPost> of(Config config, Pi4jBus buses, Kept kept) {
    List<SensorPost> posts = new ArrayList<>();
    for (Config.Sensor sensor : config.sensors()) {
      Chip chip = Chip.of(sensor.chip().word());
      SensorPost post =
          new SensorPost(
              sensor.id(),
              chip.driver(buses.at(sensor.bus(), sensor.address())),
              sensor.mounting());
      post.use(kept.setup(sensor.id()));
      kept.drift(post.id(), post.chip()).ifPresent(post::know);
      posts.add(post);
    }
    return posts;
  }
}
