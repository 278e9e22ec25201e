package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Words;
import io.pitchwatch.config.Config;
import io.pitchwatch.levelling.Site;
import java.io.PrintWriter;
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
    try {
      return Optional.of(site(read.get().coach()));
    } catch (IllegalArgumentException e) {
      err.println(command + ": " + e.getMessage());
      return Optional.empty();
    }
  }

  private Site site(Coach coach) {
    Surface on = choose("--surface", surface, Surface.values());
    return new Site(
        coach, Lean.ofDegrees(rollDeg, pitchDeg), on, choose("--stay", stay, Stay.values()));
  }

  private static <E extends Enum<E>> E choose(String option, String word, E[] allowed) {
    return Words.find(allowed, word)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    option
                        + " is "
                        + word
                        + "; allowed are "
                        + String.join(", ", Words.of(allowed))));
  }
}
