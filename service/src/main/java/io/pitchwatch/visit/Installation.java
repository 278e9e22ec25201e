package io.pitchwatch.visit;

/**
 * What is known of the sensors as they are built in.
 *
 * @param guide how far somebody is with looking after them
 * @param twistRad by how much the frame is twisted, radians, positive when the second sensor's
 *     place has its right side lower than the first's; NaN without a second sensor that can be
 *     believed
 * @param zeroAgeDays how long ago the believed sensor was zeroed, days; NaN when not known
 * @param zeroDoubt why its zero may not hold any more, one sentence without its full stop; empty
 *     when nothing speaks against it
 * @param believed place of the sensor that is believed, 0 for the first of the config
 */
public record Installation(
    Guide guide, double twistRad, double zeroAgeDays, String zeroDoubt, int believed) {

  /** One sensor, of which nothing more is known. */
  public static final Installation PLAIN =
      new Installation(Guide.IDLE, Double.NaN, Double.NaN, "", 0);

  /** The same when nothing is sampled any more. */
  public Installation withoutSamples() {
    return new Installation(guide, Double.NaN, zeroAgeDays, zeroDoubt, believed);
  }
}
