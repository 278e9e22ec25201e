package io.pitchwatch.store;

import io.pitchwatch.settling.MinuteValue;
import java.util.EnumSet;
import java.util.Set;

/**
 * One minute of history. What is not known is NaN.
 *
 * @param atNanos monotonic time of its end, nanoseconds
 * @param wallSeconds seconds since 1970, a label: it may jump by years
 * @param rollRad mean roll, radians, positive: right side low
 * @param pitchRad mean pitch, radians, positive: front low
 * @param uncertaintyRad one standard error of the two, radians
 * @param spreadRad how far the coach rocked about them, one standard deviation, radians
 * @param temperatureC of the sensor, degrees Celsius
 * @param marks what was the case in it
 */
public record Minute(
    long atNanos,
    long wallSeconds,
    double rollRad,
    double pitchRad,
    double uncertaintyRad,
    double spreadRad,
    double temperatureC,
    Set<Mark> marks) {

  /** Copies the marks. */
  public Minute {
    marks = Set.copyOf(marks);
  }

  /**
   * A minute of the floor's readings.
   *
   * @param value what they say; whether the coach moved or was restless is marked from it
   * @param wallSeconds seconds since 1970, a label
   * @param others further marks
   */
  public static Minute of(MinuteValue value, long wallSeconds, Set<Mark> others) {
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    marks.addAll(others);
    if (value.moved()) {
      marks.add(Mark.MOVED);
    }
    if (!value.counts()) {
      marks.add(Mark.RESTLESS);
    }
    return new Minute(
        value.atNanos(),
        wallSeconds,
        value.rollRad(),
        value.pitchRad(),
        value.uncertaintyRad(),
        value.spreadRad(),
        value.temperatureC(),
        marks);
  }
}
