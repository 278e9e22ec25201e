package io.pitchwatch.sim.scenario;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioTest {

  private static List<Complaint> refusal(String text) {
    if (Scenario.parse("s.toml", text) instanceof ScenarioReading.Refused refused) {
      return refused.complaints();
    }
    throw new AssertionError("understood:\n" + text);
  }

  @Test
  void listsEveryFaultWithItsLine() {
    List<Complaint> complaints =
        refusal(
            """
            sed = 3
            [site]
            roll = 2.1
            surfase = "grass"
            [[event]]
            at = "5 min"
            does = "wlak"
            [[event]]
            does = "rain"
            amount = "3 kg"
            [sensor]
            chip = "adxl999"
            noise = "-3 ug/rtHz"
            address = "0x54"
            """);
    String all = new ScenarioReading.Refused(complaints).toString();
    for (String each :
        List.of(
            "s.toml:1: sed: unknown key",
            "did you mean seed?",
            "s.toml:3: site.roll: 2.1; allowed: a number and one of rad, deg, in quotes",
            "s.toml:4: site.surfase: unknown key",
            "s.toml:7: event[1].does: \"wlak\"",
            "did you mean walk?",
            "event[2].at: missing",
            "s.toml:10: event[2].amount: \"3 kg\"",
            "s.toml:12: sensor.chip: \"adxl999\"",
            "s.toml:13: sensor.noise:",
            "s.toml:14: sensor.address: \"0x54\"; allowed: 0x53 | 0x1d for this chip")) {
      assertTrue(all.contains(each), "no \"" + each + "\" in\n" + all);
    }
    assertEquals(9, complaints.size(), all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[[event]]\\nat = \"1 min\"\\ndoes = \"stop\" | a drive before it",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"drive\" | a stop after it",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"drive\"\\nlasts = \"9 min\"\\n[[event]]\\n"
            + "at = \"2 min\"\\ndoes = \"drive\"\\nlasts = \"9 min\" | when the coach stands again",
        "[[event]]\\nat = \"-1 min\"\\ndoes = \"walk\" | 0 or more",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"slide-out\" | roll or pitch",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"jack\" | a coach that has jacks",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"lay\"\\naxle = \"rear\"\\nside = \"left\" | either lift",
        "[[event]]\\nat = \"1 min\"\\ndoes = \"walk\"\\nevery = \"1 h\" | every and times",
        "[site]\\nroll = \"30 deg\" | at most 20 deg",
        "[site]\\nroll = \"3 deg\"\\nslope = \"2 deg\" | either slope",
        "[run]\\ndays = 0 | above 0",
        "[run]\\ndays = -1 | from 0 to 4000",
        "coach = \"nowhere.toml\" | the path of a coach's config",
        "[sensor]\\nmounting = { x = \"up\", z = \"up\" } | square to each other",
        "[[sensor]]\\n[[sensor]] | no other sensor on this bus",
        "[sensor]\\nrecording = \"nowhere.csv\" | a CSV file",
        "[sensor]\\nchip = 3 | adxl345",
        "site = 3 | a table",
        "event = 3 | tables",
        "seed = \"x\" | a whole number",
        "seed = | TOML"
      })
  void refusesWithWhatIsAllowed(String text, String words) {
    String all = new ScenarioReading.Refused(refusal(text.replace("\\n", "\n"))).toString();
    assertTrue(all.contains(words), all);
  }

  @Test
  void saysThatAFileIsNotThere() {
    assertTrue(Scenario.read("no-such-scenario").toString().contains("cannot be read"));
  }

  @ParameterizedTest
  @CsvSource({
    "38 mm, 0.038",
    "1-1/2 in, 0.0381",
    "3/4 in, 0.01905",
    "-0.5 ft, -0.1524",
    "2.5e1 cm, 0.25",
    "+2m, 2"
  })
  void readsQuantitiesAsPeopleWriteThem(String text, double metres) {
    assertEquals(metres, Quantity.parse(text, Dimension.LENGTH).orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "38",
    "mm",
    "1-1 in",
    "1/0 in",
    "1e999 m",
    "NaN m",
    "38 kg",
    "3 4 mm",
    "''",
    "1.5/2 in"
  })
  void refusesWhatIsNoQuantity(String text) {
    assertTrue(Quantity.parse(text, Dimension.LENGTH).isEmpty(), text);
  }

  /** tan pitch = tan β cos γ, tan roll = tan β sin γ: 10 deg, 40 deg from the strike is 6.47. */
  @Test
  void slopeAndHeadingGiveApparentDips() {
    Rig rig = new Rig("[site]\nslope = \"10 deg\"\nheading = \"50 deg\"\n");
    assertEquals(6.47, Math.toDegrees(rig.simulation.truth().pitchRad()), 0.005);
    assertEquals(7.69, Math.toDegrees(rig.simulation.truth().rollRad()), 0.005);
  }

  @Test
  void sameSeedSameSamples() {
    String text =
        """
        [site]
        roll = "1 deg"
        [[event]]
        at = "1 s"
        does = "walk"
        [[event]]
        at = "1 s"
        does = "engine"
        """;
    List<int[]> one = new Rig("seed = 5\n" + text).start().runTo(20);
    List<int[]> two = new Rig("seed = 5\n" + text).start().runTo(20);
    List<int[]> other = new Rig("seed = 6\n" + text).start().runTo(20);
    boolean differs = false;
    for (int i = 0; i < one.size(); i++) {
      assertArrayEquals(one.get(i), two.get(i));
      differs |= one.get(i)[0] != other.get(i)[0];
    }
    assertTrue(differs, "another seed gives other samples");
  }

  @Test
  void boardIsTurnedAsItIsMounted() {
    Rig rig =
        new Rig(
            """
            [site]
            roll = "10 deg"
            [sensor]
            noise = "0 ug/rtHz"
            mounting = { x = "left", z = "down" }
            mounting-error = { yaw = "0 deg" }
            """);
    List<int[]> samples = rig.start().runTo(1);
    double sine = Math.sin(Math.toRadians(10));
    assertEquals(sine, Rig.meanG(samples, 0), 0.003);
    assertEquals(0, Rig.meanG(samples, 1), 0.003);
    assertEquals(-Math.sqrt(1 - sine * sine), Rig.meanG(samples, 2), 0.003);
  }

  /** 5 deg of yaw turn a 3 deg pitch into 0.26 deg of false roll. */
  @Test
  void yawErrorTurnsPitchIntoRoll() {
    Rig rig =
        new Rig(
            """
            [site]
            pitch = "3 deg"
            [sensor]
            chip = "adxl345"
            mounting-error = { yaw = "5 deg" }
            """);
    List<int[]> samples = rig.start().runTo(60);
    double falseRollDeg = Math.toDegrees(Math.atan2(Rig.meanG(samples, 1), Rig.meanG(samples, 2)));
    assertEquals(0.26, Math.abs(falseRollDeg), 0.02);
  }

  @Test
  void powerCutLeavesTheChipReset() {
    String cut = "[[event]]\nat = \"10 s\"\ndoes = \"power-cut\"\nlasts = \"2 s\"\n";
    Rig rig = new Rig(cut).start();
    rig.runTo(11);
    assertEquals(0x08, rig.read(0x2D, 1)[0]);
    rig.nowNanos = 12_000_000_000L;
    assertEquals(0, rig.read(0x2D, 1)[0], "it no longer measures");
    assertEquals(0x0A, rig.read(0x2C, 1)[0]);
    assertArrayEquals(new byte[6], rig.read(0x32, 6));
    assertEquals("at=10.000 does=power-cut lasts=2.000", rig.simulation.due().get(0).toString());
  }

  @Test
  void biasDriftsWithTheSun() {
    Rig rig =
        new Rig(
            """
            [climate]
            temperature = "25 C"
            [sensor]
            noise = "20 ug/rtHz"
            bias = { y = "10 mg" }
            temperature-drift = { y = "1 mg/K" }
            [[event]]
            at = "10 s"
            does = "sun"
            rise = "20 K"
            lag = "1 s"
            """);
    List<int[]> before = rig.start().runTo(9);
    rig.runTo(30);
    List<int[]> after = rig.runTo(60);
    assertEquals(0.010, Rig.meanG(before, 1), 0.002);
    assertEquals(0.030, Rig.meanG(after, 1), 0.002);
  }

  /** A line at 65 Hz, above half the rate of 100 Hz, folds down to 35 Hz. */
  @Test
  void vibrationAboveHalfTheRateFoldsDown() {
    Rig rig =
        new Rig(
            """
            [sensor]
            noise = "0 ug/rtHz"
            [[event]]
            at = "0 s"
            does = "engine"
            line = "65 Hz"
            level = "100 mg"
            """);
    List<int[]> samples = rig.start().runTo(100);
    double left = 0.93 * Math.sqrt(2) * 0.1 / Math.hypot(1, 65 / 50.0);
    // The line wanders by 0.26 Hz either way: its power lies within that.
    assertEquals(left * left / 2, powerG2(samples, 34.6, 35.4), 0.15 * left * left / 2);
    assertTrue(powerG2(samples, 20, 34) < 0.02 * left * left);
  }

  private static double powerG2(List<int[]> samples, double fromHz, double toHz) {
    double step = 100.0 / samples.size();
    double power = 0;
    for (double hz = Math.ceil(fromHz / step) * step; hz <= toHz; hz += step) {
      double cosine = 0;
      double sine = 0;
      for (int i = 0; i < samples.size(); i++) {
        double phase = 2 * Math.PI * hz * i / 100;
        cosine += samples.get(i)[1] / 256.0 * Math.cos(phase);
        sine += samples.get(i)[1] / 256.0 * Math.sin(phase);
      }
      power += 2 * (cosine * cosine + sine * sine) / samples.size() / samples.size();
    }
    return power;
  }

  /** The service plans for one axle too; such a coach leans on its coupling in front. */
  @Test
  void coachWithOneAxleLeansAsItsGroundAndRollsByItsWheels() {
    Rig rig =
        new Rig(
            """
                    [body]
                    roll-arm = "0 m"
                    [[axle]]
                    id = "only"
                    position = "0 mm"
                    track = "1830 mm"
                    load = "4500 kg"
                    footprint = "245 mm"
                    [site]
                    roll = "1.2 deg"
                    pitch = "-0.5 deg"
                    [[event]]
                    at = "1 min"
                    does = "lay"
                    axle = "only"
                    side = "right"
                    lift = "38 mm"
                    """);
    rig.nowNanos = 59_000_000_000L;
    assertEquals(1.2, Math.toDegrees(rig.simulation.truth().rollRad()), 0.02);
    assertEquals(-0.5, Math.toDegrees(rig.simulation.truth().pitchRad()), 0.02);
    rig.nowNanos = 300_000_000_000L;
    // atan(38 mm / 1830 mm) = 1.19 deg
    assertEquals(0.01, Math.toDegrees(rig.simulation.truth().rollRad()), 0.03);
  }

  @Test
  void planLaidAndJackedLevelsTheCoach() {
    Rig rig =
        new Rig(
            """
                    [body]
                    roll-arm = "0 m"
                    [[axle]]
                    id = "front"
                    position = "0 mm"
                    track = "1960 mm"
                    load = "3600 kg"
                    droop = "90 mm"
                    footprint = "245 mm"
                    [[axle]]
                    id = "rear"
                    position = "-5600 mm"
                    track = "1830 mm"
                    load = "6900 kg"
                    droop = "80 mm"
                    footprint = "590 mm"
                    [[jack-pair]]
                    id = "front"
                    position = "-900 mm"
                    spacing = "1500 mm"
                    clearance = "330 mm"
                    stroke = "400 mm"
                    capacity = "5000 kg"
                    foot = "230 mm"
                    [[jack-pair]]
                    id = "rear"
                    position = "-6400 mm"
                    spacing = "1200 mm"
                    clearance = "330 mm"
                    stroke = "400 mm"
                    capacity = "5000 kg"
                    foot = "230 mm"
                    [[piece]]
                    id = "block"
                    thickness = "38 mm"
                    length = "380 mm"
                    width = "300 mm"
                    [site]
                    roll = "1.15 deg"
                    pitch = "0.5 deg"
                    [[event]]
                    at = "1 min"
                    does = "lay"
                    axle = "front"
                    side = "right"
                    layers = ["block"]
                    [[event]]
                    at = "1 min"
                    does = "lay"
                    axle = "rear"
                    side = "right"
                    layers = ["block"]
                    abreast = 2
                    [[event]]
                    at = "5 min"
                    does = "jack"
                    pair = "front"
                    [[event]]
                    at = "6 min"
                    does = "jack"
                    pair = "rear"
                    [[event]]
                    at = "7 min"
                    does = "jack"
                    pair = "front"
                    raise = "48 mm"
                    """);
    rig.nowNanos = 59_000_000_000L;
    assertEquals(1.15, Math.toDegrees(rig.simulation.truth().rollRad()), 0.01);
    rig.nowNanos = 600_000_000_000L;
    assertEquals(0, Math.toDegrees(rig.simulation.truth().rollRad()), 0.03);
    assertEquals(0, Math.toDegrees(rig.simulation.truth().pitchRad()), 0.05);
    assertEquals(5, rig.simulation.due().size(), "what the owner would tell the service");
  }

  /**
   * Whatever is done to a scenario's text, it is read or refused, never a failure of the reader;
   * 300 times, or 20,000 with -Dpitchwatch.full=true.
   */
  @Test
  void mutatedTextIsReadOrRefused() throws IOException {
    String text = Source.named("failing-sensor").text().replace("coach = \"heron.toml\"\n", "");
    int refused = 0;
    int rounds = Boolean.getBoolean("pitchwatch.full") ? 20_000 : 300;
    for (long seed = 0; seed < rounds; seed++) {
      String mutated = mutated(text, new SplittableRandom(seed));
      try {
        boolean understood =
            Scenario.parse("m.toml", mutated) instanceof ScenarioReading.Understood;
        refused += understood ? 0 : 1;
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + "\n" + mutated, e);
      }
    }
    assertTrue(refused > rounds / 4 && refused < rounds, refused + " refused");
  }

  private static String mutated(String text, SplittableRandom random) {
    StringBuilder mutated = new StringBuilder(text);
    int at = random.nextInt(mutated.length());
    switch (random.nextInt(3)) {
      case 0 -> mutated.setCharAt(at, (char) random.nextInt(32, 127));
      case 1 -> mutated.deleteCharAt(at);
      default -> mutated.insert(at, "\"=[]{}-9eE.".charAt(random.nextInt(11)));
    }
    return mutated.toString();
  }
}
