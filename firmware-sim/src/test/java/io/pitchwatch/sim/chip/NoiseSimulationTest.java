package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * The noise that comes out of the registers has the density that went in: the spread of means of T
 * seconds is N/√(2T), within what a thousand of them can show.
 */
class NoiseSimulationTest {

  private static final int MEANS = 1000;

  @Test
  void adxl345() {
    Bench bench = Bench.adxl345(Part.adxl345(), Still.FLAT);
    bench.write(0x31, 0x08);
    bench.write(0x38, 0x80);
    bench.write(0x2D, 0x08);
    double[][] spread = spread(bench, 100, 100, () -> bench.read(0x39), bench::data);
    // Rounding to 1/256 g adds a white noise of its own, 1/√12 of a step a sample.
    double rounding = 1e6 / 256 / Math.sqrt(12) / Math.sqrt(50);
    for (int axis = 0; axis < 3; axis++) {
      double density = Math.hypot(Part.adxl345().noiseUgPerRootHz().of(axis), rounding);
      assertEquals(density * 1e-6 * 256 * Math.sqrt(50), spread[0][axis], 0.03 * spread[0][axis]);
      assertEquals(density * 1e-6 * 256 / Math.sqrt(2), spread[1][axis], 0.1 * spread[1][axis]);
    }
  }

  @Test
  void adxl355() {
    Bench bench = Bench.adxl355(Part.adxl355(), Still.FLAT);
    bench.write(0x28, 5);
    bench.write(0x2D, 0);
    double[][] spread =
        spread(bench, 125, 80, () -> bench.read(0x05) / 3, () -> bench.words20(0x11));
    for (int axis = 0; axis < 3; axis++) {
      double steps = 22.5e-6 * 256000;
      assertEquals(steps * Math.sqrt(125 / 4.0), spread[0][axis], 0.03 * spread[0][axis]);
      assertEquals(steps / Math.sqrt(2), spread[1][axis], 0.1 * spread[1][axis]);
    }
  }

  @Test
  void mpu6050() {
    Bench bench = Bench.mpu6050(Part.mpu6050(), Still.FLAT);
    bench.write(0x6B, 0x01);
    bench.write(0x1A, 6);
    bench.write(0x19, 9);
    bench.write(0x23, 0x08);
    bench.write(0x6A, 0x40);
    double[][] spread =
        spread(bench, 100, 100, () -> bench.words16(0x72, 1)[0] / 6, () -> bench.words16(0x74, 3));
    for (int axis = 0; axis < 3; axis++) {
      // A pole at 5 Hz passes noise as if it were sharp at π/2·5 Hz, and means of 1 s lose 2 % to
      // it.
      double steps = 400e-6 * 16384;
      assertEquals(steps * Math.sqrt(Math.PI / 2 * 5), spread[0][axis], 0.06 * spread[0][axis]);
      assertEquals(steps / Math.sqrt(2), spread[1][axis], 0.12 * spread[1][axis]);
    }
  }

  /** Spread of single samples and of means of one second, each axis, in steps. */
  private static double[][] spread(
      Bench bench, int perMean, int pollMillis, Supplier<Integer> waiting, Supplier<int[]> read) {
    double[][] sums = new double[2][3];
    double[][] squares = new double[2][3];
    double[] mean = new double[3];
    int[] counts = new int[2];
    int inMean = 0;
    while (counts[1] < MEANS) {
      bench.pass(pollMillis * Bench.MILLISECOND);
      for (int left = waiting.get(); left > 0; left--) {
        int[] words = read.get();
        inMean++;
        for (int axis = 0; axis < 3; axis++) {
          sums[0][axis] += words[axis];
          squares[0][axis] += (double) words[axis] * words[axis];
          mean[axis] += words[axis] / (double) perMean;
        }
        counts[0]++;
        if (inMean == perMean) {
          for (int axis = 0; axis < 3; axis++) {
            sums[1][axis] += mean[axis];
            squares[1][axis] += mean[axis] * mean[axis];
            mean[axis] = 0;
          }
          counts[1]++;
          inMean = 0;
        }
      }
    }
    double[][] spread = new double[2][3];
    for (int kind = 0; kind < 2; kind++) {
      for (int axis = 0; axis < 3; axis++) {
        double average = sums[kind][axis] / counts[kind];
        spread[kind][axis] = Math.sqrt(squares[kind][axis] / counts[kind] - average * average);
      }
    }
    return spread;
  }
}
