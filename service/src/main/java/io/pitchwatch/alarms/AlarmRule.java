package io.pitchwatch.alarms;

/**
 * How one alarm behaves.
 *
 * @param id its lasting name, of a-z, 0-9 and -
 * @param priority how soon somebody should act
 * @param onDelayNanos how long the condition must hold before it is raised, nanoseconds
 * @param offDelayNanos how long it must be gone before it is over, nanoseconds
 * @param deadband how far below its limit a value must be to count as gone, in the value's own unit
 * @param latching whether it stays until acknowledged, though the condition is gone
 * @param suppressedUnderWay whether it means nothing while the coach is driven
 */
public record AlarmRule(
    String id,
    Priority priority,
    long onDelayNanos,
    long offDelayNanos,
    double deadband,
    boolean latching,
    boolean suppressedUnderWay) {

  /**
   * Checks every figure.
   *
   * @throws IllegalArgumentException if the id is empty or holds other characters, or a figure is
   *     negative
   */
  public AlarmRule {
    if (!id.matches("[a-z0-9-]+")) {
      throw new IllegalArgumentException("id is \"" + id + "\"; it must be of a-z, 0-9 and -");
    }
    if (onDelayNanos < 0 || offDelayNanos < 0 || !(deadband >= 0)) {
      throw new IllegalArgumentException("delays and deadband of " + id + " must be 0 or more");
    }
  }
}
