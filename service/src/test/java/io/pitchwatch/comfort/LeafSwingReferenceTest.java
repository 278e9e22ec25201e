package io.pitchwatch.comfort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A leaf that swings freely, against published periods. */
class LeafSwingReferenceTest {

  /** A leaf without friction that opens from left to the rear and beyond, hinge leaning back. */
  private static DoorDrive drive(double tiltRad) {
    Door door =
        new Door("gate", Direction.LEFT, Direction.REAR, Math.PI, 0, 1000 /* unused here */);
    return new DoorDrive(door, new UpVector(Math.sin(tiltRad), 0, Math.cos(tiltRad)));
  }

  /** Full period, seconds: twice the time from one turning point to the other. */
  private static double period(double tiltRad, double widthMetres, double amplitudeRad) {
    LeafSwing leaf = new LeafSwing(drive(tiltRad), widthMetres, Math.PI / 2 - amplitudeRad);
    assertTrue(leaf.swingOnce(Math.PI, 1e4));
    assertEquals(Math.PI / 2 + amplitudeRad, leaf.openRad(), 1e-7);
    return 2 * leaf.seconds();
  }

  /**
   * Swinging gate on a tilted hinge, T = 2π√(L/(g sin θ)), L = 10 cm: J. C. Lahr, Tilt sensitivity
   * of swinging-gate horizontal sensor (the printed pairs fit g = 9.80 m/s², ours is the standard
   * 9.80665, hence three digits). A uniform leaf has L = 2w/3.
   */
  @ParameterizedTest
  @CsvSource({"2, 5.7801", "5, 0.9233", "10, 0.2308"})
  void publishedTableOfTheSwingingGate(double periodSeconds, double tiltDeg) {
    double width = 0.10 * 3 / 2;
    double period = period(Math.toRadians(tiltDeg), width, Math.toRadians(0.5));
    assertEquals(periodSeconds, period, 0.001 * periodSeconds);
  }

  /** The same source: a cross tilt β turns the rest by atan(sin β/tan θ), for small tilts. */
  @ParameterizedTest
  @CsvSource({"5.7801, 0.0231", "0.9233, 0.0231", "0.2308, 0.0231", "0.9233, -0.5"})
  void publishedRestAngleOfTheSwingingGate(double tiltDeg, double crossDeg) {
    double tilt = Math.toRadians(tiltDeg);
    double cross = Math.toRadians(crossDeg);
    Door gate = new Door("gate", Direction.LEFT, Direction.REAR, Math.PI, 0, 150);
    UpVector up = UpVector.of(Math.tan(tilt), Math.sin(cross), 1);
    double turned = DoorReport.of(gate, up).restRad() - Math.PI / 2;
    double published = Math.atan(Math.sin(cross) / Math.tan(tilt));
    assertEquals(published, turned, 1e-9);
  }

  /** Small free swing of a uniform leaf: T₀ = 2π√(2w/(3 g sin tilt)), the compound pendulum. */
  @ParameterizedTest
  @CsvSource({"0.56, 1", "0.70, 3", "0.62, 0.1"})
  void smallSwingHasThePeriodOfTheCompoundPendulum(double widthMetres, double tiltDeg) {
    double tilt = Math.toRadians(tiltDeg);
    double t0 = 2 * Math.PI * Math.sqrt(2 * widthMetres / (3 * 9.80665 * Math.sin(tilt)));
    assertEquals(1, period(tilt, widthMetres, Math.toRadians(0.1)) / t0, 1e-6);
  }

  /**
   * At 90 deg amplitude T/T₀ = 2K(sin 45°)/π = 1.18034: complete elliptic integral, handbooks of
   * functions, e.g. NIST Digital Library of Mathematical Functions, chapter 19 (from memory).
   */
  @Test
  void rightAngleOfAmplitudeLengthensThePeriodAsTheEllipticIntegralSays() {
    double tilt = Math.toRadians(2);
    double t0 = 2 * Math.PI * Math.sqrt(2 * 0.6 / (3 * 9.80665 * Math.sin(tilt)));
    LeafSwing leaf = new LeafSwing(wide(tilt), 0.6, Math.PI / 2);
    assertTrue(leaf.swingOnce(2 * Math.PI, 1e4));
    assertEquals(1.18034, 2 * leaf.seconds() / t0, 5e-6);
  }

  /** A leaf that may turn right round and hangs at 180 deg: the shut side is high. */
  private static DoorDrive wide(double tiltRad) {
    Door door = new Door("gate", Direction.LEFT, Direction.REAR, 2 * Math.PI, 0, 600);
    return new DoorDrive(door, new UpVector(0, Math.sin(tiltRad), Math.cos(tiltRad)));
  }
}
