package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;
import io.pitchwatch.mqtt.homie.Node;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.SensorReport;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** One sensor: whether it can be believed, how warm it is, how much it shakes. */
public final class SensorNode implements CoachNode {

  static final Property HEALTH = Property.choice("health", "Health", Words.of(Health.values()));
  static final Property TEMPERATURE =
      Property.number("temperature", "Temperature", Property.DEGREE + "C", 1);
  static final Property NOISE =
      Property.number("noise", "Spread of single samples", Property.DEGREE, 2)
          .withFormat("0:")
          .unhurried();

  private final String sensor;
  private final Node node;

  /**
   * The node of one sensor.
   *
   * @param sensor its name
   */
  public SensorNode(String sensor) {
    this.sensor = sensor;
    this.node =
        new Node("sensor-" + sensor, "Sensor " + sensor, List.of(HEALTH, TEMPERATURE, NOISE));
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public List<Reading> read(Report report, LongFunction<Instant> wall) {
    Value health = Value.UNKNOWN;
    double temperatureC = Double.NaN;
    double noiseRad = Double.NaN;
    for (SensorReport each : report.sensors()) {
      if (each.id().equals(sensor)) {
        health = Value.of(each.health());
        temperatureC = each.temperatureC();
        noiseRad = each.noiseRad();
      }
    }
    // Health is judged with every report, whether or not samples come.
    return new Readings(node, report.atNanos())
        .put(HEALTH, health)
        .put(TEMPERATURE, Value.of(temperatureC))
        .put(NOISE, Value.of(Math.toDegrees(noiseRad)))
        .list();
  }

  @Override
  public Optional<Guard> guard(Property property) {
    return property.equals(HEALTH)
        ? Optional.empty()
        : Optional.of(new Guard(node, HEALTH, Words.of(Health.FAILED)));
  }

  @Override
  public boolean isDiagnostic() {
    return true;
  }
}
