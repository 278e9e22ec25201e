package io.pitchwatch.visit;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.comfort.DoorReport;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.settling.GroundReport;
import java.util.List;

/**
 * All that is known at one instant; what the edges publish, show and store.
 *
 * @param atNanos monotonic time of the report
 * @param floor how the floor leans
 * @param verdict how that compares with what is asked
 * @param fridges one for each fridge of the coach, in its order
 * @param sensors one for each sensor
 * @param stay kind of stay
 * @param surface what the coach stands on
 * @param phase where the coach is in its stay
 * @param laid what lies under the tyres
 * @param ground what is known of the ground under the coach
 * @param doors one for each door, in the coach's order; none while that is not known
 * @param advice what the driver is told
 * @param alerts what stands against the coach right now, most urgent first
 * @param installation what is known of the sensors as they are built in
 * @param site the owner's name for the place, and what is remembered of it
 */
public record Report(
    long atNanos,
    FloorReading floor,
    Verdict verdict,
    List<FridgeReport> fridges,
    List<SensorReport> sensors,
    Stay stay,
    Surface surface,
    Phase phase,
    Laid laid,
    GroundReport ground,
    List<DoorReport> doors,
    Advice advice,
    List<AlertReport> alerts,
    Installation installation,
    SiteReport site) {

  /** Copies the lists. */
  public Report {
    fridges = List.copyOf(fridges);
    sensors = List.copyOf(sensors);
    doors = List.copyOf(doors);
    alerts = List.copyOf(alerts);
  }

  /**
   * One fridge.
   *
   * @param id the owner's name for it
   * @param marginRad distance to the nearer limit, radians, negative outside; NaN when unknown
   * @param outsideMinutes minutes outside since parking
   */
  public record FridgeReport(String id, double marginRad, double outsideMinutes) {}

  /**
   * One sensor.
   *
   * @param id its name
   * @param health whether it can be believed
   * @param reason why not, one sentence; empty when good
   * @param temperatureC degrees Celsius; NaN when the chip has no thermometer
   * @param noiseRad spread of single samples as tilt, radians; NaN when unknown
   * @param sight how it sees the floor by itself
   */
  public record SensorReport(
      String id,
      Health health,
      String reason,
      double temperatureC,
      double noiseRad,
      SensorSight sight) {}

  /**
   * One alert that stands.
   *
   * @param id its lasting name, of a-z, 0-9 and -
   * @param text what, how much, since when and what to do, for people
   * @param sinceNanos monotonic time at which it was raised
   */
  public record AlertReport(String id, String text, long sinceNanos) {}
}
