package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the ground under the lowest layers is asked to bear, beside presumptive values.
 *
 * <p>International Building Code 2012, Table 1806.2: sandy gravel and gravel 3,000 psf; clay and
 * silt 1,500 psf; mud, organic soil and unprepared fill: none presumed. They are for foundations,
 * so they warn and decide nothing.
 */
final class Bearing {

  /** One pound-force per square foot, pascals: 0.45359237 kg, 9.80665 m/s², 0.3048 m. */
  static final double PA_PER_PSF = 0.45359237 * 9.80665 / (0.3048 * 0.3048);

  private static final double G = 9.80665;
  private static final double MM2_PER_M2 = 1e6;

  private Bearing() {}

  /** Pressure under the lowest layer of a station's stack, pascals. */
  static double pressurePa(Axle axle, Piece lowest, int abreast) {
    double areaM2 = abreast * lowest.widthMm() * lowest.lengthMm() / MM2_PER_M2;
    return axle.loadKg() / 2 * G / areaM2;
  }

  /** What is presumed of the ground, pascals; 0 for nothing, infinite where it is paved. */
  static double presumedPa(Surface surface) {
    return switch (surface) {
      case CONCRETE, ASPHALT -> Double.POSITIVE_INFINITY;
      case GRAVEL -> 3000 * PA_PER_PSF;
      case GRASS -> 1500 * PA_PER_PSF;
      case SOFT -> 0;
    };
  }

  /** One remark if any stack presses harder than is presumed. */
  static List<Reason> remarks(Site site, WheelPlan wheels) {
    double presumedPa = presumedPa(site.surface());
    String where = "";
    double mostPa = presumedPa;
    for (WheelStack wheel : wheels.wheels()) {
      double pa = pressurePa(site.coach(), wheel);
      if (pa > mostPa) {
        mostPa = pa;
        where = wheel.axle() + " " + Words.of(wheel.side());
      }
    }
    List<Reason> remarks = new ArrayList<>();
    if (!where.isEmpty()) {
      String beside =
          presumedPa == 0
              ? "nothing is presumed of soft ground"
              : String.format(Locale.ROOT, "%.0f kPa are presumed of it", presumedPa / 1000);
      remarks.add(
          new Reason(
              "bearing",
              String.format(
                  Locale.ROOT,
                  "under %s the ground bears %.0f kPa; %s (IBC 2012, Table 1806.2): ask the site",
                  where,
                  mostPa / 1000,
                  beside)));
    }
    return remarks;
  }

  private static double pressurePa(Coach coach, WheelStack wheel) {
    Layer lowest = wheel.layers().get(0);
    Axle axle = coach.axle(wheel.axle()).orElseThrow();
    Piece piece = coach.piece(lowest.piece()).orElseThrow();
    return pressurePa(axle, piece, lowest.abreast());
  }
}
