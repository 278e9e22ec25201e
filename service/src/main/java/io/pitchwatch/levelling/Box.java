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

  /** Holds nothing back at first. */
  Box(int axles) {
    fromMm = new double[axles];
    toMm = new double[axles];
    fromApartMm = new double[axles];
    toApartMm = new double[axles];
    Arrays.fill(fromMm, Double.NEGATIVE_INFINITY);
    Arrays.fill(toMm, Double.POSITIVE_INFINITY);
    Arrays.fill(fromApartMm, Double.NEGATIVE_INFINITY);
    Arrays.fill(toApartMm, Double.POSITIVE_INFINITY);
  }
}
