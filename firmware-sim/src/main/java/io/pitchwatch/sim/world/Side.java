package io.pitchwatch.sim.world;

import java.util.Locale;

/** A side of the coach, seen from the driver's seat. */
public enum Side {
  LEFT(0, 1),
  RIGHT(1, -1);

  private final int index;
  private final int sign;

  Side(int index, int sign) {
    this.index = index;
    this.sign = sign;
  }

  /** Its name in files. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** 0 left, 1 right. */
  int index() {
    return index;
  }

  /** Sign of y on this side: 1 left, −1 right. */
  public int sign() {
    return sign;
  }
}
