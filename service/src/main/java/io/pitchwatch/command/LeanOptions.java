package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Words;
import io.pitchwatch.config.Config;
import io.pitchwatch.levelling.Site;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A site given by hand, for the commands that need neither sensor nor broker. */
final class LeanOptions {

  @Mixin ConfigOption config;

  @Option(
      names = "--roll",
      required = true,
      paramLabel = "DEG",
      description = "Lean side to side, degrees, -15 to 15; above 0 the right side is low.")
  double rollDeg;

  @Option(
      names = "--pitch",
      required = true,
      paramLabel = "DEG",
      description = "Lean front to back, degrees, -15 to 15; above 0 the front is low.")
  double pitchDeg;

  @Option(
      names = "--surface",
      paramLabel = "S",
      description = "concrete, asphalt, gravel, grass or soft (default: grass).")
  String surface = "grass";

  @Option(
      names = "--stay",
      paramLabel = "K",
      description = "overnight, stay or season (default: stay).")
  String stay = "stay";

  @Option(names = "--json", description = "Print one JSON document instead of text.")
  boolean json;

  /**
   * The site; what is wrong with the config or an option is printed.
   *
   * @param command name of the command, for what is said
   * @return empty if anything is wrong
   */
  Optional<Site> site(String command, PrintWriter err) {
    Optional<Config> read = config.read(err);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    List<String> faults = new ArrayList<>();
    Optional<Surface> on = choose("--surface", surface, Surface.values(), faults);
    Optional<Stay> kind = choose("--stay", stay, Stay.values(), faults);
    angle("--roll", rollDeg, faults);
    angle("--pitch", pitchDeg, faults);
    faults.forEach(fault -> err.println(command + ": " + fault));
    return faults.isEmpty()
        ? Optional.of(
            new Site(
                read.get().coach(),
                Lean.ofDegrees(rollDeg, pitchDeg),
                on.orElseThrow(),
                kind.orElseThrow()))
        : Optional.empty();
  }

  private static void angle(String option, double deg, List<String> faults) {
    double mostDeg = Math.toDegrees(Site.MOST_RAD);
    if (!Site.isPlannable(Math.toRadians(deg))) {
      faults.add(
          String.format(
              Locale.ROOT,
              "%s is %s deg; allowed are -%.0f to %.0f deg",
              option,
              deg,
              mostDeg,
              mostDeg));
    }
  }

  private static <E extends Enum<E>> Optional<E> choose(
      String option, String word, E[] allowed, List<String> faults) {
    Optional<E> chosen = Words.find(allowed, word);
    if (chosen.isEmpty()) {
      faults.add(option + " is " + word + "; allowed are " + String.join(", ", Words.of(allowed)));
    }
    return chosen;
  }
}
