package io.pitchwatch.mqtt.tree;

import io.pitchwatch.attitude.TemperatureDrift;
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

  private static final String PER_C = Property.DEGREE + "/" + Property.DEGREE + "C";

  static final Property HEALTH = Property.choice("health", "Health", Words.of(Health.values()));
  static final Property TEMPERATURE =
      Property.number("temperature", "Temperature", Property.DEGREE + "C", 1);
  static final Property NOISE =
      Property.number("noise", "Spread of single samples", Property.DEGREE, 2)
          .withFormat("0:")
          .unhurried();
  static final Property ROLL_DRIFT =
      Property.number("roll-drift", "Drift of roll with temperature", PER_C, 4).unhurried();
  static final Property PITCH_DRIFT =
      Property.number("pitch-drift", "Drift of pitch with temperature", PER_C, 4).unhurried();
  static final Property DRIFT_ERROR =
      Property.number("drift-error", "Standard error of the drifts", PER_C, 4)
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
        new Node(
            "sensor-" + sensor,
            "Sensor " + sensor,
            List.of(HEALTH, TEMPERATURE, NOISE, ROLL_DRIFT, PITCH_DRIFT, DRIFT_ERROR));
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
    TemperatureDrift drift = TemperatureDrift.unknown(0);
    for (SensorReport each : report.sensors()) {
      if (each.id().equals(sensor)) {
        health = Value.of(each.health());
        temperatureC = each.temperatureC();
        noiseRad = each.noiseRad();
        drift = each.sight().drift();
      }
    }
    double known = drift.isLearnt() ? Math.toDegrees(1) : Double.NaN;
    // Health is judged with every report, whether or not samples come.
    return new Readings(node, report.atNanos())
        .put(HEALTH, health)
        .put(TEMPERATURE, Value.of(temperatureC))
        .put(NOISE, Value.of(Math.toDegrees(noiseRad)))
        .put(ROLL_DRIFT, Value.of(known * drift.rollPerC()))
        .put(PITCH_DRIFT, Value.of(known * drift.pitchPerC()))
        .put(DRIFT_ERROR, Value.of(known * drift.errorPerC()))
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
