package io.pitchwatch.store;

/** How finely history is kept, and how long. */
public enum Resolution {
  /** Forty days of minutes. */
  MINUTE(60, 40 * 1440),
  /** Two years of hours. */
  HOUR(3600, 2 * 366 * 24),
  /** Twenty years of days. */
  DAY(86_400, 20 * 366);

  private final int seconds;
  private final int mostRows;

  Resolution(int seconds, int mostRows) {
    this.seconds = seconds;
    this.mostRows = mostRows;
  }

  /** Length of one row, seconds. */
  public int seconds() {
    return seconds;
  }

  /** How many rows are kept; the oldest are forgotten. */
  public int mostRows() {
    return mostRows;
  }
}
