package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import java.util.List;

/**
 * What goes under the wheels, and what comes of it.
 *
 * @param wheels one for each station that stands on something, front to back, left before right
 * @param after the lean with the wheels on their stacks and the jacks up, radians
 * @param twistRad the largest difference between two axles' turns, radians
 * @param excessHundredths how far the lean that counts exceeds the stay's tolerance, hundredths of
 *     a degree, rounded; 0 when inside
 * @param pieces laid in all, stairs included
 * @param proven whether no better one can be; else there was too much on board to compare
 */
public record WheelPlan(
    List<WheelStack> wheels,
    Lean after,
    double twistRad,
    long excessHundredths,
    int pieces,
    boolean proven) {

  /** Copies the list. */
  public WheelPlan {
    wheels = List.copyOf(wheels);
  }

  /** One that no other beats. */
  WheelPlan(
      List<WheelStack> wheels, Lean after, double twistRad, long excessHundredths, int pieces) {
    this(wheels, after, twistRad, excessHundredths, pieces, true);
  }

  /** The same, proven or not. */
  WheelPlan proven(boolean isProven) {
    return new WheelPlan(wheels, after, twistRad, excessHundredths, pieces, isProven);
  }

  /** Nothing under any wheel. */
  static WheelPlan nothing(Lean lean, double toleranceRad) {
    long excess = Excess.hundredths(Math.abs(lean.rollRad()), toleranceRad);
    return new WheelPlan(List.of(), lean, 0, excess, 0);
  }

  /** Pieces of one kind laid, stairs included. */
  public int piecesOf(String kind) {
    return wheels.stream().mapToInt(wheel -> wheel.piecesOf(kind)).sum();
  }
}
