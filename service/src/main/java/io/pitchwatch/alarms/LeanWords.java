package io.pitchwatch.alarms;

import io.pitchwatch.coach.AngleText;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.LengthText;

/**
 * Leans in words that name the low side, with the height they make in the owner's units: over the
 * widest track for roll, over the axles' distance for pitch.
 */
final class LeanWords {

  private final Coach coach;
  private final double trackMm;
  private final double wheelbaseMm;

  LeanWords(Coach coach) {
    this.coach = coach;
    double widest = 0;
    double foremost = Double.NEGATIVE_INFINITY;
    double rearmost = Double.POSITIVE_INFINITY;
    for (Axle axle : coach.axles()) {
      widest = Math.max(widest, axle.trackMm());
      foremost = Math.max(foremost, axle.positionMm());
      rearmost = Math.min(rearmost, axle.positionMm());
    }
    trackMm = widest;
    wheelbaseMm = foremost - rearmost;
  }

  /** The side that a change or a state of roll makes low: "right" or "left". */
  static String side(double rollRad) {
    return rollRad > 0 ? "right" : "left";
  }

  /** The end that a change or a state of pitch makes low: "front" or "rear". */
  static String end(double pitchRad) {
    return pitchRad > 0 ? "front" : "rear";
  }

  /** "0.42 deg (14 mm from side to side)", without a sign. */
  String roll(double rollRad) {
    return amount(rollRad, trackMm, " from side to side");
  }

  /** "0.42 deg (41 mm from axle to axle)", without a sign; degrees alone for a single axle. */
  String pitch(double pitchRad) {
    return amount(pitchRad, wheelbaseMm, " from axle to axle");
  }

  private String amount(double angleRad, double baseMm, String over) {
    double size = Math.abs(angleRad);
    String degrees = AngleText.of(size, 2);
    return baseMm > 0
        ? degrees + " (" + LengthText.of(baseMm * Math.tan(size), coach.units()) + over + ")"
        : degrees;
  }

  /** "right side low by …, front low by …": both angles, the larger first. */
  String both(double rollRad, double pitchRad) {
    String roll = side(rollRad) + " side low by " + roll(rollRad);
    String pitch = end(pitchRad) + " low by " + pitch(pitchRad);
    return Math.abs(rollRad) >= Math.abs(pitchRad) ? roll + ", " + pitch : pitch + ", " + roll;
  }
}
