package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.visit.Health;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Every driver through every fault, at every range and rate, mounted every way: whatever happens,
 * no sample is made up, the sensor is failed within ten seconds where it fails, and good again
 * after.
 *
 * <p>Each combination of chip, range, rate and fault runs with one mounting, drawn from a seed;
 * with {@code -Dpitchwatch.full=true} it runs with all twenty-four.
 */
class DriverSweepSimulationTest {

  private static final long SEED = 345_355_6050L;
  private static final boolean FULL = Boolean.getBoolean("pitchwatch.full");

  private static final double FROM_S = 6;
  private static final double TO_S = 14;
  private static final double END_S = 22;
  private static final double STALL_S = 4;

  private enum Fault {
    NONE(""),
    NAK("kind = \"nak\""),
    NAK_NOW_AND_THEN("kind = \"nak\"\nshare = 0.02"),
    STUCK("kind = \"stuck\""),
    FROZEN("kind = \"frozen\""),
    SPIKES("kind = \"spike\"\nshare = 0.002"),
    SLOW("kind = \"slow\""),
    BROWN_OUT(""),
    OVERRUN("");

    final String event;

    Fault(String more) {
      event =
          more.isEmpty()
              ? ""
              : """
              [[event]]
              at = "%s s"
              does = "bus-fault"
              lasts = "%s s"
              %s
              """
                  .formatted(FROM_S, TO_S - FROM_S, more);
    }

    boolean silences() {
      return this == NAK || this == STUCK || this == FROZEN;
    }
  }

  /** A mounting: where the chip's x and z point, and the axes that follow. */
  private record Mounting(String x, String z, UpVector alongX, UpVector alongZ) {

    double[] seen(UpVector up) {
      UpVector alongY =
          new UpVector(
              alongZ.y() * alongX.z() - alongZ.z() * alongX.y(),
              alongZ.z() * alongX.x() - alongZ.x() * alongX.z(),
              alongZ.x() * alongX.y() - alongZ.y() * alongX.x());
      return new double[] {dot(up, alongX), dot(up, alongY), dot(up, alongZ)};
    }

    static double dot(UpVector a, UpVector b) {
      return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }
  }

  private static final List<Mounting> MOUNTINGS = mountings();

  private static List<Mounting> mountings() {
    String[] names = {"forward", "rearward", "left", "right", "up", "down"};
    List<Mounting> all = new ArrayList<>();
    for (int x = 0; x < 6; x++) {
      for (int z = 0; z < 6; z++) {
        if (x / 2 != z / 2) {
          all.add(new Mounting(names[x], names[z], along(x), along(z)));
        }
      }
    }
    return all;
  }

  private static UpVector along(int direction) {
    double sign = direction % 2 == 0 ? 1 : -1;
    return switch (direction / 2) {
      case 0 -> new UpVector(sign, 0, 0);
      case 1 -> new UpVector(0, sign, 0);
      default -> new UpVector(0, 0, sign);
    };
  }

  @Test
  void adxl345() {
    sweep(Chip.ADXL345, new double[] {2, 4, 8, 16}, new double[] {25, 50, 100, 200, 400, 800});
  }

  @Test
  void adxl355() {
    sweep(Chip.ADXL355, new double[] {2, 4, 8}, new double[] {31.25, 62.5, 125, 250, 500, 1000});
  }

  @Test
  void mpu6050() {
    sweep(Chip.MPU6050, new double[] {2, 4, 8, 16}, new double[] {25, 50, 100, 200, 500, 1000});
  }

  private static void sweep(Chip chip, double[] rangesG, double[] ratesHz) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (double rangeG : rangesG) {
      for (double rateHz : ratesHz) {
        if (rateHz > 250 && rangeG > 2 && !FULL) {
          continue; // the many samples take long, and range and rate do not meet in a driver
        }
        for (Fault fault : Fault.values()) {
          List<Mounting> some =
              FULL ? MOUNTINGS : List.of(MOUNTINGS.get(random.nextInt(MOUNTINGS.size())));
          for (Mounting mounting : some) {
            run(chip, new AccelerometerSettings(rangeG, rateHz), fault, mounting);
          }
        }
      }
    }
  }

  private static void run(
      Chip chip, AccelerometerSettings settings, Fault fault, Mounting mounting) {
    String scenario =
        """
        seed = 17
        [sensor]
        chip = "%s"
        address = "0x%02X"
        mounting = { x = "%s", z = "%s" }
        [site]
        roll = "2 deg"
        pitch = "-1 deg"
        %s
        """
            .formatted(chip.id(), chip.addresses().get(0), mounting.x(), mounting.z(), fault.event);
    try (Bench bench = new Bench(chip, settings, scenario).runTo(FROM_S)) {
      if (fault == Fault.BROWN_OUT) {
        brownOut(chip, bench.buses.at(1, chip.addresses().get(0)));
      }
      if (fault == Fault.OVERRUN) {
        bench.stallTo(FROM_S + STALL_S);
      }
      bench.runTo(END_S);
      String what =
          String.format(Locale.ROOT, "%s %s %s %s seed %d", chip, settings, fault, mounting, SEED);
      assertTrueSamples(bench, settings, fault, mounting, what);
      assertHealth(bench, fault, what);
      double rate = bench.between(END_S - 5, END_S - 1).size() / 4.0;
      assertEquals(settings.rateHz(), rate, 0.02 * settings.rateHz() + 0.5, what);
    } catch (RuntimeException e) {
      throw new AssertionError(chip + " " + settings + " " + fault + " " + mounting, e);
    }
  }

  private static void brownOut(Chip chip, RegisterBus bus) {
    switch (chip) {
      case ADXL345 -> {
        bus.write(0x2D, 0x00);
        bus.write(0x31, 0x00);
        bus.write(0x2C, 0x0A);
        bus.write(0x38, 0x00);
      }
      case ADXL355 -> bus.write(0x2F, 0x52);
      case MPU6050 -> bus.write(0x6B, 0x80);
    }
  }

  private static void assertTrueSamples(
      Bench bench, AccelerometerSettings settings, Fault fault, Mounting mounting, String what) {
    UpVector up = UpVector.of(new Lean(Math.toRadians(2), Math.toRadians(-1)));
    double[] truth = mounting.seen(up);
    ChipFacts facts = bench.driver.facts();
    double noise = Math.max(facts.xyNoiseG(), facts.zNoiseG()) * Math.sqrt(settings.rateHz());
    double tolerance = 6 * noise + facts.resolutionG();
    double last = Double.NEGATIVE_INFINITY;
    int wild = 0;
    for (Bench.Sample sample : bench.samples) {
      assertTrue(sample.s() > last, what);
      last = sample.s();
      double off =
          Math.max(
              Math.abs(sample.x() - truth[0]),
              Math.max(Math.abs(sample.y() - truth[1]), Math.abs(sample.z() - truth[2])));
      wild += off > tolerance ? 1 : 0;
    }
    int most = fault == Fault.SPIKES ? bench.samples.size() / 50 : 0;
    assertTrue(wild <= most, what + ": " + wild + " samples are off");
  }

  private static void assertHealth(Bench bench, Fault fault, String what) {
    Bench.Change before = bench.at(FROM_S - 0.5);
    assertEquals(Health.GOOD, before.health(), what + " " + before);
    Bench.Change held = bench.at(FROM_S + 5);
    if (fault.silences()) {
      assertEquals(Health.FAILED, held.health(), what);
      assertTrue(bench.between(FROM_S + 5, TO_S - 0.3).isEmpty(), what);
    } else if (fault != Fault.OVERRUN) {
      assertTrue(held.health() != Health.FAILED, what + " " + held);
    }
    Bench.Change after = bench.at(TO_S + 3.5);
    boolean soon = fault != Fault.NAK_NOW_AND_THEN; // a bus that fails often is doubted for longer
    assertTrue(!soon || after.health() == Health.GOOD, what + " " + after);
    Bench.Change end = bench.at(END_S);
    assertEquals(Health.GOOD, end.health(), what + " " + end);
    SensorCondition.Counts counts = bench.condition().counts();
    assertEquals(fault == Fault.BROWN_OUT ? 1 : 0, counts.brownOuts(), what);
    boolean overrun = fault == Fault.OVERRUN && held(bench) < STALL_S * bench.driver.rateHz();
    assertTrue(!overrun || counts.gaps() > 0, what);
    assertEquals(SelfTest.Verdict.PASSED, bench.sampler.selfTest(), what);
    assertTrue(fault != Fault.NONE || counts.gaps() + counts.busErrors() == 0, what);
  }

  /** Samples that the chip's FIFO holds. */
  private static int held(Bench bench) {
    return bench.driver instanceof Mpu6050Driver ? 1024 / 6 : 32;
  }
}
