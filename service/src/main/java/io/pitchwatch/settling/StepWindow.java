package io.pitchwatch.settling;

/**
 * The last eight minutes, looked at for a change that comes at once and stays.
 *
 * <p>Four minutes before, one in which it may happen, three after. It is a step when the means
 * before and after differ by more than the smallest step worth an event, and neither side changes
 * by more than a third of that within itself: what sinks, however fast, does not stand still on
 * both sides.
 */
final class StepWindow {

  /** Smallest step that is an event, radians: more than people do to most coaches. Own figure. */
  static final double SMALLEST_RAD = Math.toRadians(0.2);

  static final int BEFORE = 4;
  static final int AFTER = 3;
  static final int SIZE = BEFORE + 1 + AFTER;
  private static final double FLAT_SHARE = 1.0 / 3;

  private final MinuteValue[] minutes = new MinuteValue[SIZE];
  private int count;

  int count() {
    return count;
  }

  boolean isFull() {
    return count == SIZE;
  }

  void add(MinuteValue minute) {
    minutes[count++] = minute;
  }

  MinuteValue removeOldest() {
    MinuteValue oldest = minutes[0];
    count--;
    System.arraycopy(minutes, 1, minutes, 0, count);
    return oldest;
  }

  /** The first minute after a step; the window is full. */
  MinuteValue firstAfter() {
    return minutes[SIZE - AFTER];
  }

  /** Mean of the newest minutes, at most so many of them, at least one. */
  double newestRad(LeanAxis axis, int atMost) {
    return meanRad(axis, Math.max(0, count - atMost), count);
  }

  /** Change from before to after; the window is full. */
  double changeRad(LeanAxis axis) {
    return meanRad(axis, SIZE - AFTER, SIZE) - meanRad(axis, 0, BEFORE);
  }

  /** Whether the full window shows a step in either angle. */
  boolean showsStep() {
    return showsStep(LeanAxis.ROLL) || showsStep(LeanAxis.PITCH);
  }

  private boolean showsStep(LeanAxis axis) {
    double change = Math.abs(changeRad(axis));
    return change > SMALLEST_RAD
        && rangeRad(axis, 0, BEFORE) < change * FLAT_SHARE
        && rangeRad(axis, SIZE - AFTER, SIZE) < change * FLAT_SHARE;
  }

  private double meanRad(LeanAxis axis, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += axis.angleRad(minutes[i]);
    }
    return sum / (to - from);
  }

  private double rangeRad(LeanAxis axis, int from, int to) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      double angle = axis.angleRad(minutes[i]);
      least = Math.min(least, angle);
      most = Math.max(most, angle);
    }
    return most - least;
  }
}
