package io.pitchwatch.sensing;

/** Where samples go, in the order in which the chip took them. */
@FunctionalInterface
public interface SampleSink {

  /**
   * One sample, as the chip took it.
   *
   * @param nanos host's monotonic time at which the chip took it, reconstructed from the chip's own
   *     pace; strictly rising
   * @param xG specific force along the chip's x axis, g
   * @param yG along its y axis, g
   * @param zG along its z axis, g
   */
  void sample(long nanos, double xG, double yG, double zG);

  /**
   * A sample with at least one axis at the end of its range: something happened, how much is not
   * known.
   *
   * @param nanos as for a sample
   */
  default void saturated(long nanos) {}

  /**
   * Samples are missing between the one before and the one after.
   *
   * @param nanos host's monotonic time at which that was noticed
   */
  default void gap(long nanos) {}
}
