package io.pitchwatch.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * W. J. Riley, NIST Special Publication 1065, Handbook of Frequency Stability Analysis (2008), its
 * test suites; values read in a public library's test of the same sets.
 */
class AllanDeviationReferenceTest {

  private static final Path STILL = Path.of("../../shared/refs/recordings/mpu6050-still-11min.csv");

  /** n₀ = 1234567890, nᵢ₊₁ = 16807·nᵢ mod 2147483647, xᵢ = nᵢ/2147483647. */
  private static double[] thousandPoints() {
    double[] samples = new double[1000];
    long n = 1234567890L;
    for (int i = 0; i < samples.length; i++) {
      samples[i] = n / 2147483647.0;
      n = 16807 * n % 2147483647L;
    }
    return samples;
  }

  @Test
  void thousandPointSet() {
    AllanDeviation set = AllanDeviation.ofSamples(thousandPoints());
    assertEquals(0.2922319, set.plain(1), 5e-8);
    assertEquals(0.09965736, set.plain(10), 5e-9);
    assertEquals(0.03897804, set.plain(100), 5e-9);
    assertEquals(0.2922319, set.overlapping(1), 5e-8);
    assertEquals(0.09159953, set.overlapping(10), 5e-9);
    assertEquals(0.03241343, set.overlapping(100), 5e-9);
    assertEquals(0.2922319, set.modified(1), 5e-8);
    assertEquals(0.06172376, set.modified(10), 5e-9);
    assertEquals(0.02170921, set.modified(100), 5e-9);
  }

  @Test
  void tenPhasePoints() {
    AllanDeviation set =
        AllanDeviation.ofPhase(
            0, 103.11111, 123.22222, 157.33333, 166.44444, 48.55555, -96.33333, -2.22222, 111.88889,
            0);
    assertEquals(91.22945, set.plain(1), 5e-6);
    assertEquals(115.8082, set.plain(2), 5e-5);
    assertEquals(85.95287, set.overlapping(2), 5e-6);
  }

  /**
   * The source's own statistics of the recording: s.d. 3.128, 3.117, 4.979 mg. White noise of that
   * size would leave σ/√m in means over m samples; averaging pays at least down to a second.
   */
  @Test
  void realStillLogHasItsPublishedSpreadAndAveragesLikeWhiteNoise() throws IOException {
    assumeTrue(Files.exists(STILL), "skipped: no recording at " + STILL);
    List<String> lines = Files.readAllLines(STILL);
    double[] y = new double[lines.size() - 1];
    double mean = 0;
    for (int i = 0; i < y.length; i++) {
      y[i] = Double.parseDouble(lines.get(i + 1).split(",", -1)[2]);
      mean += y[i] / y.length;
    }
    double squares = 0;
    for (double value : y) {
      squares += (value - mean) * (value - mean);
    }
    assertEquals(0.0657738, mean, 5e-7);
    assertEquals(3.117e-3, Math.sqrt(squares / y.length), 5e-6);
    AllanDeviation log = AllanDeviation.ofSamples(y);
    double white = log.overlapping(1) / Math.sqrt(100);
    assertEquals(1, log.overlapping(100) / white, 0.35);
  }
}
