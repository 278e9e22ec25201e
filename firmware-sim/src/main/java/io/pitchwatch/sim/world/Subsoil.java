package io.pitchwatch.sim.world;

import java.util.Arrays;

/**
 * The soil under all wheels of a stand: it consolidates, creeps, and gives way where rain has
 * soaked it. Where a wheel is put on something else, its soil begins anew.
 */
final class Subsoil implements Stance.Change {

  private static final double HALFWAY_FACTOR = 0.197;
  private static final double CREEP_FROM_S = 3600;
  private static final double SHORTEST_STEP_S = 60;
  private static final double LONGEST_STEP_S = 3600;
  private static final double DAMP = 1e-3;

  /** The pressure of a usual tyre, at which soaked ground gives as Soil says, Pa. */
  private static final double REFERENCE_PA = 700e3;

  /** A wheel that has sunk so deep stands on twice the area, metres. */
  private static final double RUT_M = 0.05;

  private final double startS;
  private final Soil soil;
  private final Rain rain;
  private final double[] weakness;
  private final double[] sinceS;
  private final int[] laid;
  private final double[] settledM;
  private final double[] rutM;
  private double lastS;

  /**
   * Soil under a stand.
   *
   * @param startS when the wheels come onto it, seconds
   * @param soil its figures
   * @param rain on it
   * @param weakness how much weaker than the figures it is under each wheel, axle by axle, left
   *     then right; 1 for as they say
   */
  Subsoil(double startS, Soil soil, Rain rain, double[] weakness) {
    this.startS = startS;
    this.soil = soil;
    this.rain = rain;
    this.weakness = weakness.clone();
    this.sinceS = new double[weakness.length];
    this.laid = new int[weakness.length];
    this.settledM = new double[weakness.length];
    this.rutM = new double[weakness.length];
    this.lastS = startS;
    Arrays.fill(sinceS, startS);
  }

  @Override
  public double startS() {
    return startS;
  }

  @Override
  public double overS() {
    return Double.POSITIVE_INFINITY;
  }

  /** A minute while it is wet; the longer it has stood dry, the longer. */
  @Override
  public double stepS(double timeS) {
    if (rain.wetness(timeS + SHORTEST_STEP_S) > DAMP) {
      return SHORTEST_STEP_S;
    }
    double nextRainS = Double.POSITIVE_INFINITY;
    for (Rain.Shower shower : rain.showers()) {
      if (shower.startS() > timeS) {
        nextRainS = Math.min(nextRainS, shower.startS() - timeS);
      }
    }
    double youngestS = timeS - startS;
    for (double since : sinceS) {
      youngestS = Math.min(youngestS, timeS - since);
    }
    double dryS = Math.max(SHORTEST_STEP_S, Math.min(LONGEST_STEP_S, youngestS / 50));
    return Math.max(SHORTEST_STEP_S, Math.min(dryS, nextRainS));
  }

  @Override
  public void act(double timeS, Parking parking) {
    double wet = rain.wetness((lastS + timeS) / 2);
    double[] deeperM = new double[weakness.length];
    for (int wheel = 0; wheel < weakness.length; wheel++) {
      if (parking.laidTimes(wheel) != laid[wheel]) {
        laid[wheel] = parking.laidTimes(wheel);
        sinceS[wheel] = timeS;
        settledM[wheel] = 0;
        rutM[wheel] = 0;
      }
      double soFarM = settlementM(timeS - sinceS[wheel], wheel, parking);
      double rutsM = wet == 0 ? 0 : rutMPerS(wet, wheel, parking) * (timeS - lastS);
      deeperM[wheel] = soFarM - settledM[wheel] + rutsM;
      settledM[wheel] = soFarM;
      rutM[wheel] += rutsM;
    }
    // Together and last: each changes what all wheels carry.
    for (int wheel = 0; wheel < weakness.length; wheel++) {
      parking.sink(wheel, deeperM[wheel]);
    }
    lastS = timeS;
  }

  private double rutMPerS(double wet, int wheel, Parking parking) {
    double pressure = parking.pressurePa(wheel) / REFERENCE_PA;
    double wider = 1 + rutM[wheel] / RUT_M;
    return soil.softensMPerS() * weakness[wheel] * wet * wet * pressure / wider;
  }

  private double settlementM(double ageS, int wheel, Parking parking) {
    double atOnceM = parking.pressedM(wheel);
    double degree = Consolidation.degree(HALFWAY_FACTOR * ageS / soil.halfwayS());
    // Stress from a footing reaches about twice its width down.
    double depthM = 2 * parking.widthM(wheel);
    double creepM = Creep.settlementM(soil.creep(), depthM, CREEP_FROM_S, CREEP_FROM_S + ageS);
    return weakness[wheel] * (soil.consolidates() * atOnceM * degree + creepM);
  }
}
