package io.pitchwatch.settling;

import java.util.SplittableRandom;

/**
 * People in a coach on its springs: they walk a step or two at a time, sit for an hour, go out for
 * the day, sleep. Each leans the coach by weight × arm ÷ stiffness.
 *
 * <p>Figures are ours: 75 kg each, up to 0.9 m from the centre line and 4 m from the middle; a
 * coach of 6 to 15 t turns by 0.02 to 0.15 deg for one of them in roll, on jacks by a third of
 * that, and by an eighth of its roll in pitch.
 */
final class Crew {

  private static final double NEWTON_EACH = 75 * 9.81;
  private static final double DEG = 180 / Math.PI;

  private final SplittableRandom random;
  private final double rollStiffness;
  private final double pitchStiffness;
  private final double[] y;
  private final double[] x;
  private final double[] stays;
  private final boolean[] out;
  private int stepping;

  Crew(SplittableRandom random) {
    this.random = random;
    double massKg = random.nextDouble(6000, 15000);
    double jacks = random.nextDouble() < 0.4 ? 3 : 1;
    rollStiffness = massKg * random.nextDouble(45, 90) * jacks;
    pitchStiffness = 8 * rollStiffness;
    int people = 1 + random.nextInt(6);
    y = new double[people];
    x = new double[people];
    stays = new double[people];
    out = new boolean[people];
  }

  void minute(boolean day) {
    stepping = 0;
    for (int i = 0; i < y.length; i++) {
      stays[i]--;
      if (stays[i] <= 0) {
        out[i] = day && random.nextDouble() < 0.25;
        y[i] = random.nextDouble(-0.9, 0.9);
        x[i] = random.nextDouble(-4, 4);
        stays[i] = -Math.log(1 - random.nextDouble()) * meanStay(out[i], day);
        stepping++;
      }
    }
  }

  private double meanStay(boolean outside, boolean day) {
    if (outside) {
      return 120;
    }
    return day ? (random.nextBoolean() ? 4 : 50) : 300;
  }

  /** How many changed place in this minute. */
  int stepping() {
    return stepping;
  }

  double rollDeg() {
    return leanDeg(y, rollStiffness);
  }

  double pitchDeg() {
    return leanDeg(x, pitchStiffness);
  }

  private double leanDeg(double[] arms, double stiffness) {
    double moment = 0;
    for (int i = 0; i < arms.length; i++) {
      moment += out[i] ? 0 : NEWTON_EACH * arms[i];
    }
    return moment / stiffness * DEG;
  }

  /** Softer coaches lean further under wind too; a coach of middling size has about 1. */
  double softness() {
    return 600_000 / rollStiffness;
  }
}
