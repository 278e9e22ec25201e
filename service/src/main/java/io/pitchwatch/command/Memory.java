package io.pitchwatch.command;

import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.mqtt.tree.LaidDocument;
import io.pitchwatch.mqtt.tree.MalformedException;
import io.pitchwatch.store.Keepsakes;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.VisitState;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The visit and the zeros as words that can be kept; a word that makes no sense is as if absent.
 */
final class Memory {

  private final Keepsakes keepsakes;
  private final Consumer<String> complain;

  /**
   * A memory.
   *
   * @param complain told in one sentence when something could not be kept
   */
  Memory(Keepsakes keepsakes, Consumer<String> complain) {
    this.keepsakes = keepsakes;
    this.complain = complain;
  }

  Optional<Zero> zero(String sensor) {
    return keepsakes.get("zero." + sensor).flatMap(Memory::parseZero);
  }

  void keep(String sensor, Zero zero) {
    put("zero." + sensor, write(zero));
  }

  VisitState visit(Coach coach, long nowNanos) {
    VisitState fresh = VisitState.atStart(nowNanos);
    return new VisitState(
        word("phase", Phase.class, fresh.phase()),
        word("stay", Stay.class, fresh.stay()),
        word("surface", Surface.class, fresh.surface()),
        laid(coach),
        fresh.moving(),
        nowNanos);
  }

  void keep(VisitState state) {
    put("phase", write(state.phase()));
    put("stay", write(state.stay()));
    put("surface", write(state.surface()));
    put("laid", LaidDocument.write(state.laid()));
  }

  private void put(String name, String word) {
    keepsakes.put(name, word).ifPresent(complain);
  }

  private Laid laid(Coach coach) {
    Optional<String> document = keepsakes.get("laid");
    if (document.isEmpty()) {
      return Laid.NOTHING;
    }
    try {
      return LaidDocument.parse(document.get(), coach);
    } catch (MalformedException e) {
      complain.accept(
          "what was laid is forgotten, since the config no longer knows it: " + e.getMessage());
      return Laid.NOTHING;
    }
  }

  private <E extends Enum<E>> E word(String name, Class<E> type, E otherwise) {
    String word = keepsakes.get(name).orElse("");
    for (E value : type.getEnumConstants()) {
      if (write(value).equals(word)) {
        return value;
      }
    }
    return otherwise;
  }

  private static String write(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String write(Zero zero) {
    UpVector up = zero.up();
    return up.x()
        + " "
        + up.y()
        + " "
        + up.z()
        + " "
        + zero.standardErrorRad()
        + " "
        + zero.temperatureC()
        + " "
        + zero.date();
  }

  private static Optional<Zero> parseZero(String text) {
    String[] words = text.split(" ", -1);
    if (words.length != 6) {
      return Optional.empty();
    }
    try {
      UpVector up =
          UpVector.of(
              Double.parseDouble(words[0]),
              Double.parseDouble(words[1]),
              Double.parseDouble(words[2]));
      double errorRad = Double.parseDouble(words[3]);
      return Optional.of(new Zero(up, errorRad, Double.parseDouble(words[4]), words[5]));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
