package io.pitchwatch.sensing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.visit.Health;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The sampler and the ADXL345's driver on the simulated bus: a good day, and every bad one. */
class SamplerSimulationTest {

  private static final String STILL =
      """
      seed = 11
      [sensor]
      chip = "adxl345"
      [site]
      roll = "2 deg"
      pitch = "-1 deg"
      """;

  private static final double[] UP = up(2, -1);

  private static double[] up(double rollDeg, double pitchDeg) {
    UpVector up = UpVector.of(new Lean(Math.toRadians(rollDeg), Math.toRadians(pitchDeg)));
    return new double[] {up.x(), up.y(), up.z()};
  }

  private static Bench bench(String events) {
    return new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, STILL + events);
  }

  private static String event(String does, double atS, double lastsS, String more) {
    return """
        [[event]]
        at = "%s s"
        does = "%s"
        lasts = "%s s"
        %s
        """
        .formatted(atS, does, lastsS, more);
  }

  /** No sample is far from the truth: none was made up out of a fault. */
  private static void assertAllTrue(Bench bench) {
    for (Bench.Sample sample : bench.samples) {
      assertArrayEquals(
          UP, new double[] {sample.x(), sample.y(), sample.z()}, 0.03, "at " + sample.s() + " s");
    }
  }

  private static void assertTimesRise(Bench bench) {
    for (int i = 1; i < bench.samples.size(); i++) {
      assertTrue(bench.samples.get(i).s() > bench.samples.get(i - 1).s(), "sample " + i);
    }
  }

  @Test
  void stillCoachGivesEvenSamplesAndGoodHealth() {
    try (Bench bench = bench("").runTo(60)) {
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
      assertEquals(100, bench.condition().rateHz(), 0.5);
      assertEquals(0, bench.condition().counts().busErrors());
      assertTrue(bench.gaps.isEmpty());
      assertAllTrue(bench);
      List<Bench.Sample> minute = bench.between(10, 59);
      assertEquals(4900, minute.size(), 3);
      // 0.3 mg: three standard errors of the mean of 4,900 samples of 4.3 mg, and then some.
      assertArrayEquals(UP, Bench.mean(minute), 0.0003);
      for (int i = 1; i < minute.size(); i++) {
        assertEquals(0.010, minute.get(i).s() - minute.get(i - 1).s(), 0.001, "sample " + i);
      }
    }
  }

  @Test
  void firstSampleComesWithinASecondSelfTestIncluded() {
    try (Bench bench = bench("").runTo(3)) {
      assertTrue(bench.samples.get(0).s() < 1.0, "first at " + bench.samples.get(0).s() + " s");
    }
  }

  @Test
  void nakStorm() {
    try (Bench bench = bench(event("bus-fault", 20, 15, "kind = \"nak\"")).runTo(60)) {
      assertOutage(bench, 20, 35, "no samples: no chip answers at this address");
    }
  }

  @Test
  void stuckBus() {
    try (Bench bench = bench(event("stuck", 20, 15, "what = \"bus\"")).runTo(60)) {
      assertOutage(bench, 20, 35, "no samples: ");
    }
  }

  private static void assertOutage(Bench bench, double fromS, double toS, String reason) {
    assertAllTrue(bench);
    assertTimesRise(bench);
    assertEquals(Health.GOOD, bench.at(fromS - 1).health());
    assertTrue(bench.between(fromS + 0.5, toS).isEmpty(), "samples from a dead bus");
    Bench.Change during = bench.at(fromS + 2);
    assertEquals(Health.FAILED, during.health());
    assertTrue(during.reason().startsWith(reason), during.reason());
    assertEquals(Health.FAILED, bench.at(toS).health());
    List<Bench.Sample> after = bench.between(toS, toS + 2);
    assertFalse(after.isEmpty(), "no sample within two seconds of the fault's end");
    assertEquals(Health.GOOD, bench.at(toS + 2).health(), bench.at(toS + 2).reason());
    assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
  }

  @Test
  void transactionsLostNowAndThenAreLivedWith() {
    String fault = event("bus-fault", 20, 30, "kind = \"nak\"\nshare = 0.03");
    try (Bench bench = bench(fault).runTo(70)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      assertTrue(bench.condition().counts().busErrors() > 20);
      for (double s = 21; s < 50; s += 1) {
        assertFalse(bench.between(s, s + 1).isEmpty(), "no sample in second " + s);
      }
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void slowBusIsLivedWith() {
    try (Bench bench = bench(event("bus-fault", 20, 20, "kind = \"slow\"")).runTo(60)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      assertFalse(bench.between(45, 46).isEmpty());
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void frozenValueIsNoLongerHandedOnAndFailsTheSensor() {
    try (Bench bench = bench(event("bus-fault", 20, 20, "kind = \"frozen\"")).runTo(60)) {
      assertAllTrue(bench);
      assertTrue(bench.between(22.5, 39.9).isEmpty(), "a frozen value was handed on");
      assertEquals(Health.FAILED, bench.at(23).health());
      assertEquals("it repeats one value", bench.at(23).reason());
      assertFalse(bench.between(40, 42).isEmpty());
      assertEquals(Health.GOOD, bench.at(42).health(), bench.at(42).reason());
    }
  }

  @Test
  void spikesAreCountedAndDoNotFailTheSensor() {
    String fault = event("bus-fault", 20, 20, "kind = \"spike\"\nshare = 0.005");
    try (Bench bench = bench(fault).runTo(60)) {
      SensorCondition.Counts counts = bench.condition().counts();
      long odd = counts.spikes() + counts.saturated();
      assertTrue(odd > 2 && odd < 40, "spikes " + counts);
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
      assertTrue(bench.between(20, 40).size() > 1900);
    }
  }

  /** What a dip of the supply leaves: the reset values of the data sheet's Table 19. */
  private static void brownOut(Bench bench) {
    RegisterBus chip = bench.buses.at(1, 0x53);
    assertTrue(chip.write(0x2D, 0x00).ok());
    assertTrue(chip.write(0x31, 0x00).ok());
    assertTrue(chip.write(0x2C, 0x0A).ok());
    assertTrue(chip.write(0x38, 0x00).ok());
  }

  @Test
  void brownOutIsNoticedAndTheChipSetUpAnew() {
    try (Bench bench = bench("").runTo(20)) {
      brownOut(bench);
      bench.runTo(40);
      assertAllTrue(bench);
      assertEquals(1, bench.condition().counts().brownOuts());
      assertEquals(1, bench.condition().counts().restarts());
      assertFalse(bench.between(20.2, 20.5).isEmpty(), "back within half a second");
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void supplyThatDipsAgainAndAgainIsDoubted() {
    try (Bench bench = bench("")) {
      for (int i = 1; i <= 3; i++) {
        brownOut(bench.runTo(20 * i));
      }
      bench.runTo(90);
      assertEquals(Health.DOUBTFUL, bench.condition().health());
      assertEquals("its supply dips again and again", bench.condition().reason());
    }
  }

  @Test
  void overrunIsAGapAndNothingIsMadeUpForIt() {
    try (Bench bench = bench("").runTo(20).stallTo(22).runTo(40)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      assertEquals(1, bench.gaps.size());
      assertEquals(22, bench.gaps.get(0), 0.01);
      // The FIFO holds the last 32 samples; the 170 or so before are gone.
      assertEquals(32, bench.between(20.05, 21.999).size(), 1);
      assertTrue(bench.between(20.05, 21.6).isEmpty());
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void chipWhoseClockIsThreePercentFastIsTimedByTheHostsClock() {
    String fast = STILL.replace("chip = \"adxl345\"", "chip = \"adxl345\"\nclock = \"3 %\"");
    try (Bench bench = new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, fast).runTo(120)) {
      assertEquals(103, bench.condition().rateHz(), 0.1);
      assertTrue(bench.gaps.isEmpty(), "gaps at " + bench.gaps);
      List<Bench.Sample> later = bench.between(60, 110);
      assertEquals(50 * 103, later.size(), 3);
      for (int i = 1; i < later.size(); i++) {
        assertEquals(1 / 103.0, later.get(i).s() - later.get(i - 1).s(), 0.0006, "sample " + i);
      }
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void clockFarOffIsDoubted() {
    String fast = STILL.replace("chip = \"adxl345\"", "chip = \"adxl345\"\nclock = \"8 %\"");
    try (Bench bench = new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, fast).runTo(30)) {
      assertEquals(Health.DOUBTFUL, bench.condition().health());
      assertEquals("its clock is off by more than 6 %", bench.condition().reason());
    }
  }

  @Test
  void chipThatIsAbsentIsLookedForUntilItComes() {
    String elsewhere = STILL.replace("chip =", "address = \"0x1D\"\nchip =");
    try (Bench bench = new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, elsewhere).runTo(10)) {
      assertTrue(bench.samples.isEmpty());
      assertEquals(Health.FAILED, bench.condition().health());
      assertEquals("no samples: no chip answers at this address", bench.condition().reason());
    }
  }

  @Test
  void searchNamesTheChipAndItsAddress() {
    String elsewhere = STILL.replace("chip =", "address = \"0x1D\"\nchip =");
    try (Bench bench = new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, elsewhere)) {
      List<ChipSearch.Found> found = ChipSearch.search(address -> bench.buses.at(1, address));
      assertEquals(List.of(new ChipSearch.Found(0x1D, "ADXL345", List.of(Chip.ADXL345))), found);
    }
  }

  private static Bench lesser(UnaryOperator<RegisterBus> chip) {
    return new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, STILL, chip);
  }

  @Test
  void chipWithoutFifoIsReadSampleBySample() {
    try (Bench bench = lesser(LesserChip::withoutFifo).runTo(200)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      assertEquals(100, bench.between(20, 60).size() / 40.0, 0.5);
      assertEquals(100, bench.condition().rateHz(), 0.5);
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void chipWithoutFifoAndDataReadyIsReadWheneverItsValuesChange() {
    try (Bench bench = lesser(LesserChip::withoutFifoAndDataReady).runTo(200)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      // Some in a hundred samples repeat the one before, and cannot be told from it.
      assertEquals(93, bench.between(20, 60).size() / 40.0, 4);
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  @Test
  void chipWhoseSelfTestMovesNothingIsDoubtedButUsed() {
    try (Bench bench = lesser(LesserChip::withoutSelfTest).runTo(20)) {
      assertAllTrue(bench);
      assertEquals(1900, bench.between(1, 20).size(), 30);
      assertEquals(Health.DOUBTFUL, bench.condition().health());
      String reason = bench.condition().reason();
      assertTrue(reason.startsWith("its self-test moved x by"), reason);
    }
  }

  /** Values that jump about give no verdict; it comes once they have been calm for a minute. */
  @Test
  void selfTestSpoiltAtTheStartIsDoneAgainLater() {
    String spoilt = STILL + event("bus-fault", 0, 3, "kind = \"spike\"\nshare = 0.4");
    try (Bench bench =
        new Bench(Chip.ADXL345, Adxl345Driver.DEFAULTS, spoilt, LesserChip::withoutSelfTest)
            .runTo(120)) {
      assertEquals(Health.GOOD, bench.at(55).health(), bench.at(55).reason());
      assertEquals(Health.DOUBTFUL, bench.condition().health());
      assertTrue(bench.condition().reason().startsWith("its self-test"));
      assertEquals(0, bench.condition().counts().restarts());
    }
  }

  /** A dip among the bursts of one look: what was read of that look is not handed on. */
  @Test
  void brownOutInTheMiddleOfALookGivesNoSample() {
    try (Bench bench = lesser(chip -> new DippingChip(chip, 1000)).runTo(20)) {
      assertAllTrue(bench);
      assertTimesRise(bench);
      assertEquals(1, bench.condition().counts().brownOuts());
      assertEquals(Health.GOOD, bench.condition().health(), bench.condition().reason());
    }
  }

  /** Puts the chip back to its reset values just before one burst of its data registers. */
  private static final class DippingChip implements RegisterBus {

    private final RegisterBus chip;
    private int burstsLeft;

    DippingChip(RegisterBus chip, int bursts) {
      this.chip = chip;
      this.burstsLeft = bursts;
    }

    @Override
    public BusOutcome read(int register, byte[] into, int length) {
      if (register == 0x32 && --burstsLeft == 0) {
        chip.write(0x2D, 0x00);
        chip.write(0x31, 0x00);
        chip.write(0x38, 0x00);
        Arrays.fill(into, (byte) 0); // data registers of a chip just reset
        return BusOutcome.Common.DONE;
      }
      return chip.read(register, into, length);
    }

    @Override
    public BusOutcome write(int register, int value) {
      return chip.write(register, value);
    }
  }

  @Test
  void anotherChipAtTheAddressIsNamedForWhatItIsNot() {
    String elsewhere = STILL.replace("chip =", "address = \"0x1D\"\nchip =");
    try (Bench bench = new Bench(Chip.ADXL355, Adxl355Driver.DEFAULTS, elsewhere).runTo(10)) {
      assertTrue(bench.samples.isEmpty());
      assertEquals(Health.FAILED, bench.condition().health());
      assertEquals(
          "no samples: not an ADXL355: identity register 0x00 holds 0xE5, not 0xAD",
          bench.condition().reason());
    }
  }
}
