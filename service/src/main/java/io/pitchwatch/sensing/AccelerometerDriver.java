package io.pitchwatch.sensing;

/**
 * One accelerometer: what its datasheet asks for, in steps that never wait.
 *
 * <p>A step that the datasheet wants followed by a pause says how long; whoever drives the driver
 * (the {@link Sampler}) comes back after it. The order is {@link #identify}, {@link #reset}, pause,
 * {@link #configure}, then {@link #drain} at least every {@link #longestDrainNanos}. A chip may be
 * in any state before; after a failed step the order starts anew.
 */
public interface AccelerometerDriver {

  /** What the datasheet promises. */
  ChipFacts facts();

  /** Nominal time between samples, nanoseconds. */
  long periodNanos();

  /** Reads the chip's identity and changes nothing. */
  ChipOutcome identify();

  /** Brings the chip from any state to one from which it can be configured. */
  ChipOutcome reset();

  /** Pause after {@link #reset}, nanoseconds. */
  long resetNanos();

  /** Writes and verifies every register that matters, and starts sampling. */
  ChipOutcome configure();

  /**
   * Starts sampling with the settings that the datasheet asks for in its self-test.
   *
   * @param forced whether the chip's own test force acts on its mass
   */
  ChipOutcome configureSelfTest(boolean forced);

  /** Time from {@link #configure} or {@link #configureSelfTest} until samples count, ns. */
  long settleNanos();

  /** What the self-test must change; valid after {@link #configureSelfTest}. */
  SelfTestLimits selfTestLimits();

  /**
   * Hands on every sample that the chip holds, and checks that the chip still has its settings.
   *
   * @param nowNanos host's monotonic time
   * @param sink gets the samples; on any outcome but done those before the trouble
   */
  ChipOutcome drain(long nowNanos, SampleSink sink);

  /** Longest time between drains that loses no sample, with some to spare, nanoseconds. */
  long longestDrainNanos();

  /** Measured rate of samples, Hz; nominal until measured. */
  double rateHz();

  /** The chip's thermometer as last read by {@link #drain}, °C; NaN if it has none. */
  double temperatureC();
}
