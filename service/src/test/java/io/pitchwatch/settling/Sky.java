package io.pitchwatch.settling;

import java.util.SplittableRandom;

/**
 * Wind and sun. Wind has a daily course, storms every few days that last for hours, and turns
 * slowly; its pressure leans the coach steadily and rocks it by a third of that. The sky clears and
 * clouds over twice a day; the sun warms the place of the sensor by up to ten degrees more than the
 * air and the coach's sunny side a little. Figures are ours.
 */
final class Sky {

  private final SplittableRandom random;
  private final double meanWind;
  private final double leanPerWind2;
  private final double dayMeanC;
  private final double daySwingC;
  private final double sunLeanDeg;
  private double wind;
  private double direction;
  private double storm;
  private double sunny = 1;
  private double placeC = 18;
  private double sensorC = 18;
  private int minute;

  Sky(SplittableRandom random) {
    this.random = random;
    meanWind = random.nextDouble(1, 4);
    leanPerWind2 = random.nextDouble(0.0008, 0.003);
    direction = random.nextDouble(2 * Math.PI);
    dayMeanC = random.nextDouble(8, 20);
    daySwingC = random.nextDouble(3, 9);
    sunLeanDeg = random.nextDouble(-0.05, 0.05);
  }

  void minute(double hour) {
    if (minute++ % 720 == 0) {
      sunny = random.nextDouble(0.1, 1.3);
    }
    if (random.nextDouble() < 1 / (4 * 1440.0)) {
      storm = random.nextDouble(3, 9);
    }
    storm *= Math.exp(-1 / 600.0);
    double midday = Math.max(0, Math.sin((hour - 8) / 12 * Math.PI));
    double towards = meanWind * (0.5 + 0.8 * midday) + storm;
    wind = Math.max(0, wind + (towards - wind) / 40 + 0.06 * random.nextGaussian());
    direction += 0.002 * random.nextGaussian();
    warm(hour);
  }

  private void warm(double hour) {
    double air = dayMeanC + daySwingC * sunny * Math.sin((hour - 9) / 24 * 2 * Math.PI);
    double high = Math.max(0, Math.sin((hour - 6) / 12 * Math.PI));
    double place = air + 6 * sunny * high * (hour > 12 ? 1 : 0.3);
    placeC += (place - placeC) / 60;
    sensorC += (placeC - sensorC) / 15;
  }

  double sensorC() {
    return sensorC;
  }

  /** Lean of a coach of middling softness across the wind. */
  double windRollDeg() {
    return leanPerWind2 * wind * wind * Math.sin(direction);
  }

  double windPitchDeg() {
    return 0.1 * leanPerWind2 * wind * wind * Math.cos(direction);
  }

  double sunRollDeg(double hour) {
    return sunLeanDeg * sunny * Math.sin((hour - 10) / 24 * 2 * Math.PI);
  }
}
