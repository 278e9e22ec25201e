package io.pitchwatch.store;

/**
 * Which rows of history.
 *
 * @param resolution minutes, hours or days
 * @param fromWallSeconds only rows labelled with this second since 1970 or later
 * @param toWallSeconds only rows labelled before this second
 * @param latest at most so many rows, the latest ones
 */
public record HistoryQuery(
    Resolution resolution, long fromWallSeconds, long toWallSeconds, int latest) {

  /**
   * Checks the number of rows.
   *
   * @throws IllegalArgumentException if latest is negative
   */
  public HistoryQuery {
    if (latest < 0) {
      throw new IllegalArgumentException("latest is " + latest + "; it must be 0 or more");
    }
  }

  /** Every row there is. */
  public static HistoryQuery all(Resolution resolution) {
    return new HistoryQuery(resolution, Long.MIN_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE);
  }
}
