package io.pitchwatch.levelling;

import java.util.Arrays;

/** Between what the axles' lifts lie: from and to, by axle, millimetres. */
final class Box {

  /** Mean lift of both stations, over what lies under every tyre. */
  final double[] fromMm;

  final double[] toMm;

  /** By how much the right station stands higher than the left. */
  final double[] fromApartMm;

  final double[] toApartMm;

  /** Whether the right station alone is lifted, so that the mean is half of what is apart. */
  final boolean[] rightOnly;

  /** Holds nothing back at first. */
  Box(int axles) {
    rightOnly = new boolean[axles];
    fromMm = new double[axles];
    toMm = new double[axles];
    fromApartMm = new double[axles];
    toApartMm = new double[axles];
    Arrays.fill(fromMm, Double.NEGATIVE_INFINITY);
    Arrays.fill(toMm, Double.POSITIVE_INFINITY);
    Arrays.fill(fromApartMm, Double.NEGATIVE_INFINITY);
    Arrays.fill(toApartMm, Double.POSITIVE_INFINITY);
  }

  /** Takes over what another box says of an axle. */
  void take(int k, Box other) {
    fromMm[k] = other.fromMm[k];
    toMm[k] = other.toMm[k];
    fromApartMm[k] = other.fromApartMm[k];
    toApartMm[k] = other.toApartMm[k];
  }

  /** Puts an axle to one place. */
  void put(int k, double meanMm, double apartMm) {
    fromMm[k] = meanMm;
    toMm[k] = meanMm;
    fromApartMm[k] = apartMm;
    toApartMm[k] = apartMm;
  }

  /**
   * The least of perMean·mean + perApart·apart of an axle, millimetres: no station stands lower
   * than the ground, so the mean is at least half of what is apart, either way.
   */
  double leastMm(int k, double perMean, double perApart) {
    if (rightOnly[k]) {
      return least(perMean + 2 * perApart, fromMm[k], toMm[k]);
    }
    if (perApart == 0) {
      return least(perMean, fromMm[k], toMm[k]);
    }
    double from = Math.max(fromApartMm[k], -2 * toMm[k]);
    double to = Math.min(toApartMm[k], 2 * toMm[k]);
    if (perMean < 0) {
      return perMean * toMm[k] + least(perApart, from, to);
    }
    double bendMm = 2 * fromMm[k];
    double sum = Math.min(sum(k, perMean, perApart, from), sum(k, perMean, perApart, to));
    if (from < bendMm && bendMm < to) {
      sum = Math.min(sum, sum(k, perMean, perApart, bendMm));
    }
    if (from < -bendMm && -bendMm < to) {
      sum = Math.min(sum, sum(k, perMean, perApart, -bendMm));
    }
    return sum;
  }

  private double sum(int k, double perMean, double perApart, double apartMm) {
    return perMean * Math.max(fromMm[k], Math.abs(apartMm) / 2) + perApart * apartMm;
  }

  private static double least(double factor, double from, double to) {
    return factor == 0 ? 0 : factor * (factor > 0 ? from : to);
  }
}
