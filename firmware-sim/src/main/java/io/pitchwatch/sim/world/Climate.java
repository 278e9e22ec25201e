package io.pitchwatch.sim.world;

import java.util.List;

/**
 * Temperature where the sensor sits: a mean, the swing of a day (warmest at 15 h), and spells of
 * sun.
 *
 * @param meanC mean, degrees Celsius
 * @param swingK half the difference between the day's warmest and coldest, kelvin
 * @param startHour hour of the day at scenario time 0
 * @param spells of sun on the sensor's place
 */
public record Climate(double meanC, double swingK, double startHour, List<Sun> spells) {

  /** A mild day, degrees Celsius. */
  public static final double MILD_C = 18;

  private static final double HOUR_S = 3600;
  private static final double DAY_H = 24;
  private static final double WARMEST_H = 15;

  /** After so many time constants a spell is cooler than a thousandth of what it was. */
  private static final double FORGOTTEN_LAGS = 7;

  /** Copies the list. */
  public Climate {
    spells = List.copyOf(spells);
  }

  /** Temperature at an instant, degrees Celsius. */
  double at(double timeS) {
    double hour = startHour + timeS / HOUR_S;
    double temperature =
        swingK == 0 ? meanC : meanC + swingK * Math.cos(2 * Math.PI * (hour - WARMEST_H) / DAY_H);
    for (Sun spell : spells) {
      temperature += spell.riseAt(timeS);
    }
    return temperature;
  }

  /**
   * Sun on the place where the sensor sits.
   *
   * @param startS when it reaches it, seconds
   * @param lastsS how long it shines there, seconds
   * @param riseK how much warmer the place would get in the end, kelvin
   * @param lagS time constant of warming and cooling, seconds
   */
  public record Sun(double startS, double lastsS, double riseK, double lagS) {

    double riseAt(double timeS) {
      double sinceS = timeS - startS;
      if (sinceS <= 0 || sinceS > lastsS + FORGOTTEN_LAGS * lagS) {
        return 0;
      }
      double warmed = 1 - Math.exp(-Math.min(sinceS, lastsS) / lagS);
      return riseK * warmed * (sinceS > lastsS ? Math.exp(-(sinceS - lastsS) / lagS) : 1);
    }
  }
}
