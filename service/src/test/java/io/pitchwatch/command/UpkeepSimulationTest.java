package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.attitude.Rotation;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.Triad;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.store.Kept;
import io.pitchwatch.store.Store;
import io.pitchwatch.visit.Guide;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Zero, reversal and heading of a board that is screwed on askew, through the registers of an
 * ADXL355. The coach is a recording made here, so that every lean of it is known exactly.
 */
class UpkeepSimulationTest {

  private static final double RATE_HZ = 125;
  private static final double NOISE_G = 25e-6 * Math.sqrt(RATE_HZ / 2);

  /** How the board sits: turned 5 deg to the left, and leaning by a degree or two. */
  private static final double YAW_RAD = Math.toRadians(5);

  private static final Lean BOARD = Lean.ofDegrees(1.3, -2.1);

  @TempDir Path directory;

  private final StringBuilder rows = new StringBuilder("t_s,ax_g,ay_g,az_g,temp_c\n");
  private final SplittableRandom random = new SplittableRandom(4);
  private final Store store = Store.inMemory(0);
  private int written;

  /** The coach stands so for a while. */
  private void stands(double rollDeg, double pitchDeg, double seconds) {
    UpVector up = UpVector.of(Lean.ofDegrees(rollDeg, pitchDeg));
    // Seen from the board: turned about the vertical first, then leaning.
    double c = Math.cos(YAW_RAD);
    double s = Math.sin(YAW_RAD);
    UpVector turned = UpVector.of(c * up.x() + s * up.y(), c * up.y() - s * up.x(), up.z());
    UpVector seen = Rotation.between(UpVector.LEVEL, UpVector.of(BOARD)).apply(turned);
    for (int i = 0; i < seconds * RATE_HZ; i++) {
      rows.append(
          String.format(
              Locale.ROOT,
              "%.4f,%.6f,%.6f,%.6f,21%n",
              written++ / RATE_HZ,
              seen.x() + NOISE_G * gaussian(),
              seen.y() + NOISE_G * gaussian(),
              seen.z() + NOISE_G * gaussian()));
    }
  }

  private double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private final class Coach implements AutoCloseable {
    final Pi4jBus buses;
    final LongConsumer clock;
    final SensorPost post;
    final Upkeep upkeep;
    private long nowNanos;

    Coach(Kept kept) throws IOException {
      Path csv = Files.writeString(directory.resolve("coach.csv"), rows);
      Path scenario =
          Files.writeString(
              directory.resolve("coach.toml"),
              "seed = 1\n[sensor]\nchip = \"adxl355\"\nrecording = \"" + csv + "\"\n");
      buses = BusChoice.simulated(scenario.toString()).open();
      clock = buses.face(LongConsumer.class).orElseThrow();
      clock.accept(0);
      post = new SensorPost("floor", Chip.ADXL355.driver(buses.at(1, 0x1D)), Mounting.FLAT);
      post.use(kept.setup("floor"));
      upkeep = new Upkeep(List.of(post), kept);
    }

    Coach at(double seconds) {
      while (nowNanos < seconds * 1e9) {
        nowNanos += 100_000_000L;
        clock.accept(nowNanos);
        post.poll(nowNanos);
      }
      return this;
    }

    Lean lean() {
      return post.reading(nowNanos).steady();
    }

    @Override
    public void close() {
      buses.close();
    }
  }

  private static CareStep done(CareStep step) {
    assertTrue(step.done(), step.said());
    return step;
  }

  @Test
  void alignTakesAwayTheFalseLeanThatFiveDegreesOfHeadingMake() throws Exception {
    stands(0, 0, 40);
    stands(0, -1.5, 40);
    stands(0, 3, 40);
    try (Coach coach = new Coach(store.kept())) {
      done(coach.at(35).upkeep.zero(coach.nowNanos, "2026-05-01T10:00:00Z"));
      done(coach.at(39).upkeep.alignBefore(coach.nowNanos));
      SensorSetup zeroedOnly = coach.post.setup();
      CareStep aligned = done(coach.at(75).upkeep.alignAfter(true, coach.nowNanos, "then"));
      assertTrue(aligned.said().contains("turned 5.0"), aligned.said());
      assertTrue(aligned.said().contains("that made 0.26 deg of false lean"), aligned.said());
      double after = coach.at(115).lean().rollDeg();
      assertEquals(3, coach.lean().pitchDeg(), 0.02);
      coach.post.use(zeroedOnly);
      double before = coach.at(119).lean().rollDeg();
      System.out.printf(
          Locale.ROOT,
          "3 deg of pitch, board 5 deg askew: false roll %.3f deg before align, %.3f deg after%n",
          before,
          after);
      // physics.md section 1: 3·sin 5° = 0.26 deg.
      assertEquals(0.26, Math.abs(before), 0.01);
      assertEquals(0, after, 0.01);
    }
  }

  @Test
  void reversalFindsTheZeroWhateverTheGround() throws Exception {
    stands(1.2, -0.8, 40);
    stands(0.5, 0.5, 10);
    stands(-1.2, 0.8, 40);
    stands(0, 0, 40);
    try (Coach coach = new Coach(store.kept())) {
      done(coach.at(38).upkeep.reversalFirst(coach.nowNanos, "first"));
      assertEquals(Guide.Task.REVERSAL, coach.upkeep.guide().task());
      assertTrue(coach.upkeep.guide().next().startsWith("turn the coach end for end"));
      assertFalse(coach.upkeep.zero(coach.nowNanos, "").done(), "a zero in the middle of it");
      CareStep second = done(coach.at(88).upkeep.reversalSecond(coach.nowNanos, "second"));
      assertTrue(second.said().contains("the ground there slopes by 1.44 deg"), second.said());
      assertEquals(Guide.Task.NONE, coach.upkeep.guide().task());
      coach.at(128);
      assertEquals(0, coach.lean().rollDeg(), 0.02);
      assertEquals(0, coach.lean().pitchDeg(), 0.02);
    }
  }

  @Test
  void reversalGoesOnAfterAPowerCutBetweenItsReadings() throws Exception {
    stands(1.2, -0.8, 40);
    try (Coach coach = new Coach(store.kept())) {
      done(coach.at(38).upkeep.reversalFirst(coach.nowNanos, "first"));
    }
    rows.setLength("t_s,ax_g,ay_g,az_g,temp_c\n".length());
    written = 0;
    stands(-1.2, 0.8, 40);
    stands(0, 0, 40);
    try (Coach coach = new Coach(store.kept())) {
      assertEquals(Guide.Task.REVERSAL, coach.upkeep.guide().task());
      done(coach.at(38).upkeep.reversalSecond(coach.nowNanos, "second"));
      assertEquals(0, coach.at(78).lean().rollDeg(), 0.02);
    }
  }

  @Test
  void undoGoesBackAndForth() throws Exception {
    stands(0, 0, 120);
    try (Coach coach = new Coach(store.kept())) {
      double asMounted = coach.at(35).lean().rollDeg();
      assertEquals("", coach.upkeep.guide().undo());
      assertEquals("there is nothing to go back to", coach.upkeep.undo(Optional.empty()).said());
      CareStep zero = done(coach.upkeep.zero(coach.nowNanos, "2026-05-01T10:00:00Z"));
      assertTrue(
          zero.said().startsWith("the floor as it stands now is level within ± 0.0"), zero.said());
      assertEquals("zero none, heading none, calibration none", coach.upkeep.guide().undo());
      assertEquals(0, coach.at(70).lean().rollDeg(), 0.005);
      done(coach.upkeep.undo(Optional.empty()));
      assertEquals(SensorSetup.NONE, store.kept().setup("floor"));
      assertEquals(asMounted, coach.at(100).lean().rollDeg(), 0.005);
      CareStep again = done(coach.upkeep.undo(Optional.empty()));
      assertEquals(
          "back to zero of 2026-05-01T10:00:00Z, heading none, calibration none", again.said());
    }
  }

  @Test
  void nothingIsTakenOfAFloorThatMoves() throws Exception {
    stands(0, 0, 20);
    try (Coach coach = new Coach(store.kept())) {
      coach.at(0.5);
      String why = coach.upkeep.zero(coach.nowNanos, "").said();
      assertTrue(why.startsWith("the floor is un"), why);
      assertFalse(coach.upkeep.alignBefore(coach.nowNanos).done());
      assertFalse(coach.upkeep.reversalSecond(coach.nowNanos, "").done());
      assertEquals(Zero.NONE, store.kept().setup("floor").zero());
    }
  }

  @Test
  void endThatWentUpTheOtherWayIsNoticed() throws Exception {
    stands(0, 0, 40);
    stands(0, 1.5, 40);
    try (Coach coach = new Coach(store.kept())) {
      done(coach.at(35).upkeep.zero(coach.nowNanos, ""));
      done(coach.at(39).upkeep.alignBefore(coach.nowNanos));
      CareStep wrong = coach.at(75).upkeep.alignAfter(true, coach.nowNanos, "");
      assertTrue(wrong.said().startsWith("the lean changed the other way"), wrong.said());
      done(coach.upkeep.alignAfter(false, coach.nowNanos, ""));
      assertEquals(5, Math.toDegrees(coach.post.setup().alignment().yawRad()), 0.05);
    }
  }

  @Test
  void driftIsForgottenWhereTheSensorLiesOtherwiseThanWhenItWasLearnt() throws Exception {
    stands(0, 0, 80);
    stands(0.5, 0, 40);
    stands(12, 0, 80);
    TemperatureDrift learnt = new TemperatureDrift(new Triad(2e-5, 1e-5, 0), 1e-6, 15, 25);
    try (Coach coach = new Coach(store.kept())) {
      coach.post.know(learnt);
      store.kept().keepDrift("floor", coach.post.chip(), learnt, "");
      done(coach.at(35).upkeep.zero(coach.nowNanos, ""));
      done(coach.at(115).upkeep.zero(coach.nowNanos, ""));
      assertTrue(coach.post.drift().inChip().isLearnt(), "half a degree is another level, no more");
      CareStep other = done(coach.at(195).upkeep.zero(coach.nowNanos, ""));
      assertTrue(other.said().contains("drift with temperature is forgotten"), other.said());
      assertFalse(coach.post.drift().inChip().isLearnt());
      assertEquals(Optional.empty(), store.kept().drift("floor", coach.post.chip()));
      CareStep none = done(coach.upkeep.forgetDrift(Optional.empty()));
      assertEquals("nothing was learnt of a drift with temperature yet", none.said());
    }
  }

  @Test
  void zeroIsTakenOfWhatTheSensorSeesNotOfWhatIsShown() throws Exception {
    stands(0, 0, 80);
    try (Coach coach = new Coach(store.kept())) {
      done(coach.at(35).upkeep.zero(coach.nowNanos, ""));
      Zero taken = coach.post.setup().zero();
      Zero colder = new Zero(taken.up(), taken.standardErrorRad(), 11, "");
      coach.post.use(coach.post.setup().with(colder));
      coach.post.know(new TemperatureDrift(new Triad(1e-3, 0, 0), 1e-6, 5, 25));
      coach.at(70).post.report(coach.nowNanos);
      assertEquals(10e-3, coach.lean().pitchRad(), 2e-4, "10 degrees of drift are taken away");
      done(coach.upkeep.zero(coach.nowNanos, ""));
      assertEquals(0, taken.up().angleRad(coach.post.setup().zero().up()), 2e-4);
      coach.at(79).post.report(coach.nowNanos);
      assertEquals(0, coach.lean().pitchRad(), 2e-4, "none since the new zero");
    }
  }
}
