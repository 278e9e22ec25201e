package io.pitchwatch.comfort;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Fridge;

/**
 * One fridge through a stay: its margin now, and how long it has stood outside its limits.
 *
 * <p>Time outside counts while the coach stands and starts again once it is under way, since motion
 * mixes the refrigerant (common practice). The time between two known leans counts when the fridge
 * is outside at both of them, however long the sensor was away in between: a parked coach that
 * leaned too far before and after leaned too far meanwhile. Where only one of them is outside
 * nothing is counted, as nobody knows when it changed.
 *
 * <p>Not thread-safe; allocates nothing after construction.
 */
public final class FridgeWatch {

  private static final double NANOS_PER_MINUTE = 60e9;

  private final Fridge fridge;
  private double marginRad = Double.NaN;
  private double outsideNanos;
  private boolean outside;
  private long lastKnownNanos;

  /** A fridge that has not been outside yet. */
  public FridgeWatch(Fridge fridge) {
    this(fridge, 0);
  }

  /**
   * A fridge as it was before a restart.
   *
   * @param fridge the fridge and its limits
   * @param outsideMinutes minutes outside so far, from {@link #outsideMinutes()}
   * @throws IllegalArgumentException if the minutes are negative or not finite
   */
  public FridgeWatch(Fridge fridge, double outsideMinutes) {
    if (!(outsideMinutes >= 0) || Double.isInfinite(outsideMinutes)) {
      throw new IllegalArgumentException(
          "outsideMinutes is " + outsideMinutes + "; it must be 0 or more");
    }
    this.fridge = fridge;
    this.outsideNanos = outsideMinutes * NANOS_PER_MINUTE;
  }

  /**
   * Takes the floor's lean at one instant.
   *
   * @param lean the floor's lean, radians; NaN in either angle when unknown
   * @param underWay whether the coach is being driven from place to place
   * @param nowNanos monotonic time, nanoseconds, never before that of the last call
   */
  public void accept(Lean lean, boolean underWay, long nowNanos) {
    marginRad = FridgeLimits.marginRad(fridge, lean);
    if (underWay) {
      outsideNanos = 0;
      outside = false;
    } else if (!Double.isNaN(marginRad)) {
      boolean wasOutside = outside;
      outside = marginRad < 0;
      if (wasOutside && outside) {
        outsideNanos += nowNanos - lastKnownNanos;
      }
      lastKnownNanos = nowNanos;
    }
  }

  /** The fridge and its limits. */
  public Fridge fridge() {
    return fridge;
  }

  /** Distance to the nearer limit, radians, negative outside; NaN when the lean is unknown. */
  public double marginRad() {
    return marginRad;
  }

  /** Whether the fridge is known to be inside its limits. */
  public boolean within() {
    return marginRad >= 0;
  }

  /** Minutes outside its limits since the coach came to stand. */
  public double outsideMinutes() {
    return outsideNanos / NANOS_PER_MINUTE;
  }
}
