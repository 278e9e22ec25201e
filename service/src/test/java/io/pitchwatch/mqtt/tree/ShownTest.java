package io.pitchwatch.mqtt.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ShownTest {

  private static final long SECOND = 1_000_000_000;
  private static final Topic TOPIC = new Topic("t");

  private final Shown roll = new Shown(TOPIC, Property.number("roll", "Roll", Property.DEGREE, 2));
  private final Shown time =
      new Shown(TOPIC, Property.plain("taken-at", "Time", Datatype.DATETIME));
  private final Shown stay = new Shown(TOPIC, Property.choice("stay", "Stay", "a", "b"));

  private static Optional<Publication> says(String text) {
    return Optional.of(Publication.standing(TOPIC, Payload.of(text)));
  }

  @Test
  void saysTheFirstValueAtOnce() {
    assertEquals(says("1.23"), roll.show(Value.of(1.234), Pace.PARKED, 0));
  }

  @Test
  void aRestlessEstimateIsSaidOnceAMinute() {
    Shown noise =
        new Shown(TOPIC, Property.number("noise", "Noise", Property.DEGREE, 2).unhurried());
    assertEquals(says("0.15"), noise.show(Value.of(0.15), Pace.LIVE, 0));
    assertEquals(Optional.empty(), noise.show(Value.of(0.21), Pace.LIVE, 59 * SECOND));
    assertEquals(says("0.18"), noise.show(Value.of(0.18), Pace.LIVE, 60 * SECOND));
  }

  @Test
  void takesAwayWhatAnotherLifeMayHaveLeftThere() {
    assertEquals(Optional.of(Publication.removal(TOPIC)), roll.show(Value.UNKNOWN, Pace.PARKED, 0));
    assertEquals(Optional.empty(), roll.show(Value.UNKNOWN, Pace.PARKED, SECOND));
  }

  @Test
  void saysNothingAsLongAsTheDisplayedDigitStays() {
    roll.show(Value.of(1.23), Pace.PARKED, 0);
    assertEquals(Optional.empty(), roll.show(Value.of(1.2374), Pace.PARKED, 10 * SECOND));
    assertEquals(says("1.24"), roll.show(Value.of(1.2376), Pace.PARKED, 20 * SECOND));
  }

  @Test
  void neverSaysNegativeZero() {
    assertEquals(says("0.00"), roll.show(Value.of(-0.001), Pace.PARKED, 0));
  }

  @Test
  void neverSaysMoreThanTwoValuesASecond() {
    long seed = 20260601;
    SplittableRandom random = new SplittableRandom(seed);
    int said = 0;
    for (int i = 0; i < 1000; i++) {
      long now = i * SECOND / 50;
      said += roll.show(Value.of(random.nextDouble(-5, 5)), Pace.LIVE, now).isPresent() ? 1 : 0;
    }
    assertEquals(40, said, "values in 20 s, seed " + seed);
  }

  @Test
  void doesNotFlickerOnTheEdgeBetweenTwoDigits() {
    long seed = 20260602;
    SplittableRandom random = new SplittableRandom(seed);
    int said = 0;
    for (int i = 0; i < 10_000; i++) {
      double noisy = 1.235 + random.nextDouble(-0.002, 0.002);
      said += roll.show(Value.of(noisy), Pace.PARKED, i * SECOND).isPresent() ? 1 : 0;
    }
    assertTrue(said <= 1, said + " values said, seed " + seed);
  }

  @Test
  void saysTheTimeOnceAMinuteWhileParkedAndOnceASecondWhileWatched() {
    time.show(Value.of("a"), Pace.PARKED, 0);
    assertEquals(Optional.empty(), time.show(Value.of("b"), Pace.PARKED, 59 * SECOND));
    assertEquals(says("c"), time.show(Value.of("c"), Pace.PARKED, 60 * SECOND));
    assertEquals(says("d"), time.show(Value.of("d"), Pace.LIVE, 61 * SECOND));
    assertEquals(Optional.empty(), time.show(Value.of("e"), Pace.LIVE, 61 * SECOND + 1));
  }

  @Test
  void saysAtOnceThatSomethingIsNotKnownAnyMore() {
    roll.show(Value.of(1), Pace.PARKED, 0);
    assertEquals(Optional.of(Publication.removal(TOPIC)), roll.show(Value.UNKNOWN, Pace.PARKED, 1));
  }

  @Test
  void holdsAnAcceptedCommandUntilReportsAgree() {
    stay.show(Value.of("a"), Pace.PARKED, 0);
    assertEquals(says("b"), Optional.of(stay.echo("b", SECOND)));
    assertEquals(Optional.empty(), stay.show(Value.of("a"), Pace.PARKED, 3 * SECOND));
    assertEquals(Optional.empty(), stay.show(Value.of("b"), Pace.PARKED, 3 * SECOND));
  }

  @Test
  void goesBackWhenTheServiceDidNotFollow() {
    stay.show(Value.of("a"), Pace.PARKED, 0);
    stay.echo("b", SECOND);
    assertEquals(says("a"), stay.show(Value.of("a"), Pace.PARKED, 4 * SECOND));
  }
}
