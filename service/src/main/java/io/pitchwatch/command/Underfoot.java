package io.pitchwatch.command;

import io.pitchwatch.coach.Direction;
import io.pitchwatch.command.SimulatedCoach.Due;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Laid.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a rehearsed owner lays under the wheels, and tells the service. */
final class Underfoot {

  private static final double MM_PER_M = 1000;

  private final Map<String, Wheel> wheels = new TreeMap<>();

  /** Takes a wheel's new stack; the whole is empty where nobody says of what pieces it is. */
  Optional<Laid> lay(Due due) {
    String axle = due.word("axle");
    Direction side = Direction.valueOf(due.word("side").toUpperCase(Locale.ROOT));
    List<Layer> layers = new ArrayList<>();
    for (String piece : due.word("layers").split(",", -1)) {
      if (!piece.isEmpty()) {
        layers.add(new Layer(piece, (int) due.number("abreast")));
      }
    }
    boolean bare = layers.isEmpty();
    if (bare && due.number("lift") > 0) {
      return Optional.empty();
    }
    String key = axle + " " + side;
    if (bare) {
      wheels.remove(key);
    } else {
      wheels.put(key, new Wheel(axle, side, layers, List.of()));
    }
    return Optional.of(new Laid(List.copyOf(wheels.values())));
  }

  /** What happens, in words. */
  String words(Due due) {
    return String.format(
        Locale.ROOT,
        "%s %s wheel onto %s",
        due.word("axle"),
        due.word("side"),
        due.number("lift") > 0 ? millimetres(due.number("lift")) : "the bare ground");
  }

  /** What happens to a pair of jacks, in words. */
  static String jacked(Due due) {
    return due.word("up").equals("true")
        ? due.word("pair") + " pair taken up"
        : due.word("pair") + " pair out by " + millimetres(due.number("raise"));
  }

  private static String millimetres(double metres) {
    return Math.round(metres * MM_PER_M) + " mm";
  }
}
