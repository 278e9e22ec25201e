package io.pitchwatch.sensing;

/**
 * Tells a sensor that lives, whose noise moves every sample, from one that repeats a value.
 *
 * <p>A sensor must show life, a few changes, before its samples count: at the start, and again
 * after it stood still. So one that comes out of a reset with a dead value does not pass.
 *
 * <p>One that never showed life since the process began, yet steadily says a plausible gravity, is
 * let through as doubtful: it may be an emulated chip, or one far quieter than its step. What has
 * lived once and then stands still is another matter.
 */
final class Standstill {

  /** Changes from sample to sample that show life. */
  private static final int LIFE = 3;

  /** One axis alone may dwell longer on one value when the chip is quiet for its step. */
  private static final int DEAD_AXIS_FACTOR = 5;

  private final int frozenCount;
  private final double[] last = {Double.NaN, Double.NaN, Double.NaN};
  private final int[] axisRun = new int[3];
  private int run;
  private int changes;
  private boolean frozen;
  private boolean everLived;

  /**
   * A judge of standstill.
   *
   * @param frozenCount so many samples all alike in a row are a standstill
   */
  Standstill(int frozenCount) {
    this.frozenCount = frozenCount;
  }

  /** Wants life shown anew; a standstill goes on until it is. */
  void restart() {
    changes = 0;
  }

  /**
   * Takes note of a sample, g; whether it counts.
   *
   * @param plausible whether its magnitude can be gravity's
   */
  boolean lives(double xG, double yG, double zG, boolean plausible) {
    note(0, xG);
    note(1, yG);
    note(2, zG);
    boolean same = Math.min(axisRun[0], Math.min(axisRun[1], axisRun[2])) > 0;
    run = same ? run + 1 : 0;
    changes = same || changes >= LIFE ? changes : changes + 1;
    everLived |= changes >= LIFE;
    if (run >= frozenCount && !(quietFromTheStart() && plausible)) {
      frozen = true;
      changes = 0;
    } else if (changes >= LIFE) {
      frozen = false;
    }
    return changes >= LIFE || (quietFromTheStart() && plausible);
  }

  /** Whether it has repeated one value for long, and never done anything else. */
  boolean quietFromTheStart() {
    return !everLived && run >= frozenCount;
  }

  private void note(int axis, double g) {
    axisRun[axis] = g == last[axis] ? axisRun[axis] + 1 : 0;
    last[axis] = g;
  }

  /** Whether the sensor repeats one value. */
  boolean frozen() {
    return frozen;
  }

  /** The axis that alone stands still: x, y or z; a blank if none does. */
  char deadAxis() {
    for (int axis = 0; axis < 3; axis++) {
      if (axisRun[axis] >= DEAD_AXIS_FACTOR * frozenCount) {
        return "xyz".charAt(axis);
      }
    }
    return ' ';
  }
}
