package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SampleClockPropertyTest {

  private static final long NOMINAL = 10_000_000;
  private static final long START = -7_000_000_000_000L;

  /** Looks at a chip whose oscillator is off, at uneven times. */
  private static final class Chip {
    final SplittableRandom random;
    final double period;
    final double phase;
    long taken;

    Chip(long seed) {
      random = new SplittableRandom(seed);
      period = NOMINAL * (1 + (random.nextDouble() - 0.5) * 0.1);
      phase = random.nextDouble() * period;
    }

    /** When sample number i was truly taken. */
    double truth(long i) {
      return START + phase + i * period;
    }

    int untilNow(long now) {
      long total = (long) Math.floor((now - START - phase) / period) + 1;
      int fresh = (int) (total - taken);
      taken = total;
      return fresh;
    }

    /** A look every tenth of a second, late by up to 40 ms now and then. */
    long nextLook(long now) {
      long late =
          random.nextInt(10) == 0 ? random.nextLong(40_000_000) : random.nextLong(2_000_000);
      return now + 100_000_000 + late;
    }
  }

  @Test
  void timesRiseEvenlyAndAreRightWithinOnePeriod() {
    for (long seed = 1; seed <= 40; seed++) {
      Chip chip = new Chip(seed);
      SampleClock clock = new SampleClock(NOMINAL);
      long now = START + 50_000_000;
      long last = Long.MIN_VALUE;
      long index = 0;
      for (int look = 0; look < 1200; look++) {
        now = chip.nextLook(now);
        int count = chip.untilNow(now);
        assertTrue(clock.look(count, now), "a gap where there is none, seed " + seed);
        for (int i = 0; i < count; i++, index++) {
          long nanos = clock.next();
          double error = nanos - chip.truth(index);
          String where = "seed " + seed + " sample " + index + ": ";
          assertTrue(Math.abs(error) < 1.3 * chip.period, where + "off by " + error + " ns");
          if (index > 1000) {
            double step = (nanos - last) / chip.period;
            assertEquals(1, step, 0.15, where + "step");
          }
          assertTrue(nanos > last, where + "does not rise");
          last = nanos;
        }
      }
      assertEquals(1e9 / chip.period, clock.rateHz(), 0.0005 * 1e9 / chip.period, "seed " + seed);
    }
  }

  @Test
  void lostSamplesAreNoticedAndTimesGoOnRightly() {
    for (long seed = 1; seed <= 40; seed++) {
      Chip chip = new Chip(seed);
      SampleClock clock = new SampleClock(NOMINAL);
      long now = START + 50_000_000;
      for (int look = 0; look < 600; look++) {
        now = chip.nextLook(now);
        int count = chip.untilNow(now);
        int lost = look == 500 ? 6 : 0;
        boolean whole = clock.look(count - lost, now);
        assertEquals(lost == 0, whole, "seed " + seed + " look " + look);
        for (int i = lost; i < count; i++) {
          clock.next();
        }
      }
      now = chip.nextLook(now);
      int count = chip.untilNow(now);
      clock.look(count, now);
      double error = clock.next() - chip.truth(chip.taken - count);
      assertTrue(Math.abs(error) < 1.3 * chip.period, "seed " + seed + " off by " + error + " ns");
    }
  }

  @Test
  void measuredPeriodSurvivesARestart() {
    Chip chip = new Chip(3);
    SampleClock clock = new SampleClock(NOMINAL);
    long now = START + 50_000_000;
    for (int look = 0; look < 600; look++) {
      now = chip.nextLook(now);
      int count = chip.untilNow(now);
      clock.look(count, now);
      for (int i = 0; i < count; i++) {
        clock.next();
      }
    }
    double before = clock.rateHz();
    clock.restart();
    assertEquals(before, clock.rateHz());
    assertEquals(NOMINAL / chip.period - 1, clock.drift(), 0.001);
  }

  /** An oscillator that warms up is followed over tens of minutes. */
  @Test
  void slowChangeOfTheOscillatorIsFollowed() {
    SampleClock clock = new SampleClock(NOMINAL);
    double truth = START;
    double period = NOMINAL;
    long now = START;
    for (int look = 0; look < 36_000; look++) {
      now += 100_000_000;
      period = NOMINAL * (1 + 0.002 * Math.min(1, look / 12_000.0));
      int count = 0;
      for (; truth + period <= now; truth += period) {
        count++;
      }
      assertTrue(clock.look(count, now), "look " + look);
      for (int i = 0; i < count; i++) {
        clock.next();
      }
    }
    assertEquals(1e9 / period, clock.rateHz(), 1e-4 * 1e9 / period);
  }
}
