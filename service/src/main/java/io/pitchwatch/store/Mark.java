package io.pitchwatch.store;

import java.util.EnumSet;
import java.util.Set;

/** What was the case in a minute; in an hour or a day: in at least one minute of it. */
public enum Mark {
  /** The coach was driven, or shaken as hard. */
  MOVED,
  /** It was not at rest for long enough to count. */
  RESTLESS,
  /** The lean changed at once and stayed so. */
  STEPPED,
  /** The ground was giving way. */
  SETTLING,
  /** A fridge was outside its limits. */
  FRIDGE_OUTSIDE,
  /** The sensor was doubted. */
  SENSOR_DOUBTFUL,
  /** The sensor had failed. */
  SENSOR_FAILED,
  /** An alert stood. */
  ALERT;

  // The place of each bit in the files, which must not change with the order above.
  private int bit() {
    return switch (this) {
      case MOVED -> 1;
      case RESTLESS -> 1 << 1;
      case STEPPED -> 1 << 2;
      case SETTLING -> 1 << 3;
      case FRIDGE_OUTSIDE -> 1 << 4;
      case SENSOR_DOUBTFUL -> 1 << 5;
      case SENSOR_FAILED -> 1 << 6;
      case ALERT -> 1 << 7;
    };
  }

  static int bits(Set<Mark> marks) {
    int bits = 0;
    for (Mark mark : marks) {
      bits |= mark.bit();
    }
    return bits;
  }

  static Set<Mark> of(int bits) {
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    for (Mark mark : values()) {
      if ((bits & mark.bit()) != 0) {
        marks.add(mark);
      }
    }
    return marks;
  }
}
