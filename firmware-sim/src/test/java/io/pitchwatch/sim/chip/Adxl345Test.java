package io.pitchwatch.sim.chip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Adxl345Test {

  private static final int FULL_RES = 0x08;
  private static final int MEASURE = 0x08;
  private static final int STREAM = 0x80;

  @Test
  void standsByUntilToldToMeasure() {
    Bench bench = Bench.quiet();
    bench.pass(Bench.SECOND);
    assertEquals(0, bench.read(0x30) & 0x80, "DATA_READY");
    assertArrayEquals(new int[] {0, 0, 0}, bench.data());
  }

  @Test
  void firstSampleComesAfterThePeriodAndTheTurnOnTime() {
    Bench bench = Bench.quiet();
    bench.write(0x2D, MEASURE);
    bench.pass(11 * Bench.MILLISECOND);
    assertEquals(0, bench.read(0x30) & 0x80);
    bench.pass(Bench.MILLISECOND / 10);
    assertEquals(0x80, bench.read(0x30) & 0x80);
    assertArrayEquals(new int[] {0, 0, 256}, bench.data());
    assertEquals(0, bench.read(0x30) & 0x80, "read data is no longer new");
  }

  @ParameterizedTest
  @CsvSource({
    // format, g, word: 10 bits over the range, or 1/256 g; ends of the range; left-justified
    "0x00, 1.0, 256",
    "0x01, 1.0, 128",
    "0x02, 1.0, 64",
    "0x03, 1.0, 32",
    "0x08, 1.0, 256",
    "0x0B, 1.0, 256",
    "0x0B, -12.5, -3200",
    "0x08, 3.0, 511",
    "0x08, -3.0, -512",
    "0x09, 5.0, 1023",
    "0x0B, 20.0, 4095",
    "0x0B, -20.0, -4096",
    "0x00, 3.0, 511",
    "0x03, -20.0, -512",
    "0x04, 1.0, 16384",
    "0x0C, -1.0, -16384",
    "0x0F, 1.0, 2048"
  })
  void dataWordFollowsTheFormat(String format, double forceG, int word) {
    Bench bench = Bench.adxl345(Bench.QUIET, new Still(forceG, 0, 0, 25));
    bench.write(0x31, Integer.decode(format));
    bench.write(0x2D, MEASURE);
    bench.pass(20 * Bench.MILLISECOND);
    assertEquals(word, bench.data()[0]);
  }

  @Test
  void offsetRegistersCountFourStepsEach() {
    Bench bench = Bench.quiet();
    bench.write(0x1E, 3, 0xFE, 0x7F);
    bench.write(0x31, FULL_RES | 3);
    bench.write(0x2D, MEASURE);
    bench.pass(20 * Bench.MILLISECOND);
    assertArrayEquals(new int[] {12, -8, 256 + 4 * 127}, bench.data());
  }

  @ParameterizedTest
  @CsvSource({"0x00", "0x2B", "0x30", "0x32", "0x35", "0x37", "0x39"})
  void readOnlyRegistersIgnoreWrites(String address) {
    Bench bench = Bench.quiet();
    int before = bench.read(Integer.decode(address));
    bench.write(Integer.decode(address), before ^ 0xff);
    assertEquals(before, bench.read(Integer.decode(address)));
  }

  @Test
  void pointerMovesOnThroughTheRegisters() {
    Bench bench = Bench.quiet();
    bench.write(0x2C, 0x0B, 0x00, 0x80, 0x7F);
    assertArrayEquals(new byte[] {0x0B, 0x00, (byte) 0x80, 0x7F}, bench.read(0x2C, 4));
  }

  @Test
  void streamKeepsTheNewestThirtyThree() {
    Bench bench = Bench.adxl345(Bench.QUIET, new Counting());
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    bench.pass(101 * Bench.SECOND + 5 * Bench.MILLISECOND);
    assertEquals(32, bench.read(0x39));
    assertEquals(0x83, bench.read(0x30), "data ready, watermark, overrun");
    int first = bench.data()[0];
    for (int i = 1; i < 33; i++) {
      assertEquals(first + i, bench.data()[0], "sample " + i);
    }
    assertEquals(0, bench.read(0x39));
    bench.pass(10 * Bench.MILLISECOND);
    assertEquals(first + 33, bench.data()[0], "nothing is lost once it keeps up");
  }

  @Test
  void fifoModeKeepsTheOldestAndStops() {
    Bench bench = Bench.adxl345(Bench.QUIET, new Counting());
    bench.write(0x38, 0x40);
    bench.write(0x2D, MEASURE);
    bench.pass(15 * Bench.MILLISECOND);
    int first = new Counting().countAt(bench.nowNanos);
    bench.pass(1000 * Bench.SECOND);
    assertEquals(32, bench.read(0x39));
    assertEquals(first, bench.data()[0]);
  }

  @Test
  void bypassFlagsWhatWasReplacedUnread() {
    Bench bench = Bench.quiet();
    bench.write(0x2D, MEASURE);
    bench.pass(15 * Bench.MILLISECOND);
    assertEquals(0, bench.read(0x30) & 1);
    bench.pass(10 * Bench.MILLISECOND);
    assertEquals(1, bench.read(0x30) & 1);
    bench.data();
    assertEquals(0, bench.read(0x30) & 1);
    assertEquals(0, bench.read(0x39));
  }

  @Test
  void triggerKeepsTheLastSamplesAndThenFills() {
    Bench bench = Bench.adxl345(Bench.QUIET, new Counting());
    bench.write(0x38, 0xC0 | 4);
    bench.write(0x2D, MEASURE);
    bench.pass(500 * Bench.MILLISECOND);
    assertEquals(32, bench.read(0x39));
    bench.write(0x2E, 0x80);
    bench.pass(10 * Bench.MILLISECOND);
    assertEquals(0x80 | 4, bench.read(0x39), "triggered by DATA_READY on INT1");
    bench.pass(Bench.SECOND);
    assertEquals(0x80 | 32, bench.read(0x39));
  }

  @Test
  void watermarkRisesAndFallsWithTheEntries() {
    Bench bench = Bench.quiet();
    bench.write(0x38, STREAM | 16);
    assertEquals(0, bench.read(0x30) & 2);
    bench.write(0x2D, MEASURE);
    bench.pass(165 * Bench.MILLISECOND);
    assertEquals(16, bench.read(0x39));
    assertEquals(2, bench.read(0x30) & 2);
    bench.data();
    assertEquals(0, bench.read(0x30) & 2);
  }

  @Test
  void singleByteReadLosesTheRestOfTheLevel() {
    Bench bench = Bench.adxl345(Bench.QUIET, new Counting());
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    bench.pass(45 * Bench.MILLISECOND);
    assertEquals(4, bench.read(0x39));
    bench.read(0x32);
    assertEquals(3, bench.read(0x39));
  }

  @Test
  void readingOverTheDataShowsTheNextEntryCount() {
    Bench bench = Bench.quiet();
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    bench.pass(45 * Bench.MILLISECOND);
    byte[] burst = bench.read(0x32, 8);
    assertEquals(STREAM, burst[6] & 0xff, "FIFO_CTL");
    assertEquals(3, burst[7], "FIFO_STATUS");
  }

  @Test
  void bypassEmptiesTheFifo() {
    Bench bench = Bench.quiet();
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    bench.pass(Bench.SECOND);
    bench.write(0x38, 0);
    bench.write(0x38, STREAM);
    assertEquals(0, bench.read(0x39));
  }

  @Test
  void sleepStopsTheFlow() {
    Bench bench = Bench.quiet();
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE | 0x04);
    bench.pass(Bench.SECOND);
    assertEquals(0, bench.read(0x39));
  }

  @Test
  void rateRegisterSetsThePace() {
    Bench bench = Bench.quiet();
    bench.write(0x38, STREAM);
    for (int code = 0; code < 16; code++) {
      bench.write(0x38, 0);
      bench.write(0x2D, 0);
      bench.write(0x2C, code);
      bench.write(0x38, STREAM);
      bench.write(0x2D, MEASURE);
      double periodNanos = 1e9 / (0.09765625 * (1 << code));
      bench.pass(Math.round(1.1e6 + 10.5 * periodNanos));
      assertEquals(10, bench.read(0x39), "code " + code);
    }
  }

  @Test
  void fastClockRunsAhead() {
    Bench bench = Bench.adxl345(Bench.QUIET.withClock(10_000), new Counting());
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    int samples = 0;
    for (int i = 0; i < 1000; i++) {
      bench.pass(100 * Bench.MILLISECOND);
      for (int left = bench.read(0x39); left > 0; left--) {
        bench.data();
        samples++;
      }
    }
    assertEquals(10_100, samples, 2);
  }

  @Test
  void selfTestMovesTheOutputWithinTheDatasheetsLimits() {
    Bench bench = Bench.quiet();
    bench.write(0x31, FULL_RES | 3);
    bench.write(0x2D, MEASURE);
    bench.pass(50 * Bench.MILLISECOND);
    int[] before = bench.data();
    bench.write(0x31, 0x80 | FULL_RES | 3);
    bench.pass(100 * Bench.MILLISECOND);
    int[] during = bench.data();
    assertWithin(0.20, 2.10, (during[0] - before[0]) / 256.0);
    assertWithin(-2.10, -0.20, (during[1] - before[1]) / 256.0);
    assertWithin(0.30, 3.40, (during[2] - before[2]) / 256.0);
    bench.write(0x31, FULL_RES | 3);
    bench.pass(200 * Bench.MILLISECOND);
    assertArrayEquals(before, bench.data());
  }

  @Test
  void frozenChipFillsItsFifoWithTheSameWords() {
    Bench bench = Bench.adxl345(Part.adxl345(), Still.FLAT);
    bench.write(0x38, STREAM);
    bench.write(0x2D, MEASURE);
    bench.pass(100 * Bench.MILLISECOND);
    while (bench.read(0x39) > 1) {
      bench.data();
    }
    int[] last = bench.data();
    bench.flaws.frozen(true);
    bench.pass(Bench.SECOND);
    assertEquals(32, bench.read(0x39));
    for (int i = 0; i < 32; i++) {
      assertArrayEquals(last, bench.data());
    }
  }

  private static void assertWithin(double least, double most, double value) {
    assertEquals((least + most) / 2, value, (most - least) / 2);
  }

  /** Force along x that tells how many hundredths of a second have passed, modulo 400 steps. */
  private record Counting() implements Surroundings {

    int countAt(long nanos) {
      return (int) (nanos / (10 * Bench.MILLISECOND) % 400);
    }

    @Override
    public void specificForce(long nanos, double cornerHz, double[] outG) {
      outG[0] = countAt(nanos) / 256.0;
    }

    @Override
    public double temperatureC(long nanos) {
      return 25;
    }
  }
}
