package io.pitchwatch.command;

import io.pitchwatch.config.SpanText;
import io.pitchwatch.sensing.AccelerometerDriver;
import io.pitchwatch.sensing.Recorder;
import io.pitchwatch.sensing.SampleSink;
import io.pitchwatch.sensing.Sampler;
import io.pitchwatch.sensing.SensorCondition;
import java.io.PrintWriter;
import java.nio.file.Path;

/** One recording: samples until time is up, saying how far it is. */
final class RecordingSession {

  private static final long SECOND = 1_000_000_000L;

  /** A chip that is there answers within a second. */
  private static final long PATIENCE_NANOS = 10 * SECOND;

  private static final int PROGRESS_LINES = 10;

  /** Four days at 125 Hz; more is a slip of the pen. */
  private static final long MOST_BYTES = 4L << 30;

  private final Recorder recorder;
  private final Sampler sampler;
  private final PrintWriter out;
  private final long forNanos;
  private long startNanos;
  private long sayNanos;
  private long gaps;
  private boolean begun;
  private volatile boolean stopped;

  RecordingSession(AccelerometerDriver driver, Path file, long forNanos, PrintWriter out) {
    this.recorder = new Recorder(file, forNanos, MOST_BYTES, driver::temperatureC);
    this.sampler =
        new Sampler(
            driver,
            new SampleSink() {
              @Override
              public void sample(long nanos, double x, double y, double z) {
                recorder.sample(nanos, x, y, z);
              }

              @Override
              public void gap(long nanos) {
                gaps++;
              }
            });
    this.forNanos = forNanos;
    this.out = out;
  }

  /** Ends it early, from any thread; what was recorded so far is kept. */
  void stop() {
    stopped = true;
  }

  /** Records. */
  Recorder.Outcome run(Workbench bench) throws InterruptedException {
    bench.run(sampler::poll, this::wanted);
    Recorder.Outcome outcome = recorder.finish();
    SensorCondition condition = sampler.condition(bench.clock().nanos());
    if (outcome instanceof Recorder.Outcome.Failed && condition.counts().samples() == 0) {
      return new Recorder.Outcome.Failed(condition.reason());
    }
    return outcome;
  }

  /** How often samples were lost in between. */
  long gaps() {
    return gaps;
  }

  private boolean wanted(long nowNanos) {
    if (!begun) {
      begun = true;
      startNanos = nowNanos;
      sayNanos = nowNanos + stepNanos();
    }
    SensorCondition condition = sampler.condition(nowNanos);
    long samples = condition.counts().samples();
    long elapsedNanos = nowNanos - startNanos;
    boolean dead = samples == 0 && elapsedNanos > PATIENCE_NANOS;
    boolean late = elapsedNanos > forNanos + PATIENCE_NANOS;
    if (stopped || dead || late || recorder.done()) {
      return false;
    }
    if (nowNanos - sayNanos >= 0) {
      sayNanos += stepNanos();
      String trouble = condition.reason().isEmpty() ? "good" : condition.reason();
      out.println(
          "  "
              + SpanText.of(Math.min(elapsedNanos, forNanos))
              + " of "
              + SpanText.of(forNanos)
              + ": "
              + samples
              + " samples; sensor: "
              + trouble);
      out.flush();
    }
    return true;
  }

  private long stepNanos() {
    return Math.max(5 * SECOND, forNanos / PROGRESS_LINES);
  }
}
