package io.pitchwatch.settling;

/** How much warmer the sensor is than in the beginning, and what temperatures it has seen. */
final class Warmth {

  private double firstC = Double.NaN;
  private double warmerC;
  private double lowC = Double.NaN;
  private double highC = Double.NaN;

  /** Takes a temperature, degrees Celsius; NaN without a thermometer. */
  void accept(double temperatureC) {
    if (Double.isNaN(temperatureC)) {
      return;
    }
    firstC = Double.isNaN(firstC) ? temperatureC : firstC;
    warmerC = temperatureC - firstC;
    lowC = lowC <= temperatureC ? lowC : temperatureC;
    highC = highC >= temperatureC ? highC : temperatureC;
  }

  /** Takes in what temperatures were seen before; NaN for none. */
  void seen(double fromC, double toC) {
    lowC = fromC;
    highC = toC;
  }

  /** Above the first temperature; 0 without a thermometer. */
  double warmerC() {
    return warmerC;
  }

  double lowC() {
    return lowC;
  }

  double highC() {
    return highC;
  }
}
