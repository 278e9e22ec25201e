package io.pitchwatch.floor;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What one sample costs the core, an ADXL345 at 100 Hz on a parked coach; seeded. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class FloorFilterBench {

  private static final int SAMPLES = 4096;
  private static final long PERIOD_NANOS = 10_000_000L;

  private final FloorFilter filter = new FloorFilter(new SensorNoise(290e-6, 100, 1.0 / 256));
  private final double[] noise = new double[SAMPLES];
  private int next;
  private long nanos;

  /** Makes the noise once. */
  public FloorFilterBench() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < SAMPLES; i++) {
      noise[i] = 0.002 * (random.nextDouble() + random.nextDouble() - 1);
    }
  }

  /** One sample. */
  @Benchmark
  public void accept() {
    next = (next + 3) & (SAMPLES - 4);
    nanos += PERIOD_NANOS;
    filter.accept(nanos, noise[next], noise[next + 1], 1 + noise[next + 2]);
  }
}
