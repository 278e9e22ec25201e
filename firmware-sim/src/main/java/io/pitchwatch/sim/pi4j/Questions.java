package io.pitchwatch.sim.pi4j;

import io.pitchwatch.sim.scenario.Due;
import io.pitchwatch.sim.scenario.Simulation;
import io.pitchwatch.sim.world.Attitude;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Questions that a rehearsal asks. Answers are {@code key=value} words parted by blanks; angles in
 * degrees, times in seconds of scenario time.
 *
 * <ul>
 *   <li>{@code truth}: {@code roll=2.1034 pitch=-0.8012 temperature=18.20 under-way=false}: how the
 *       floor truly lies now, rocking included.
 *   <li>{@code due}: one line for each thing that happened around the service since the last such
 *       question: {@code at=5400.000 does=broker-down lasts=600.000}; empty if nothing did.
 *   <li>{@code scenario}: {@code seed=7 run=259200.000 name=rain on the meadow}; the name comes
 *       last and runs to the end.
 *   <li>{@code site}: what its owner calls the site; empty where the scenario does not say.
 *   <li>{@code refusal}: empty; if the scenario was refused, this and every other question is
 *       answered {@code error} and everything that is wrong with it, one line each.
 *   <li>anything else: {@code error} and what can be asked.
 * </ul>
 */
final class Questions {

  private final Simulation simulation;

  Questions(Simulation simulation) {
    this.simulation = simulation;
  }

  String answer(String question) {
    return switch (question.strip()) {
      case "truth" -> truth();
      case "due" -> simulation.due().stream().map(Due::toString).collect(Collectors.joining("\n"));
      case "scenario" ->
          String.format(
              Locale.ROOT,
              "seed=%d run=%.3f name=%s",
              simulation.scenario().seed(),
              simulation.scenario().runS(),
              simulation.scenario().name());
      case "site" -> simulation.scenario().siteName();
      case "refusal" -> "";
      default -> "error \"" + question + "\" is not truth, due, scenario, site or refusal";
    };
  }

  private String truth() {
    Attitude truth = simulation.truth();
    double nowS = simulation.nowS();
    return String.format(
        Locale.ROOT,
        "roll=%.4f pitch=%.4f temperature=%.2f under-way=%b",
        Math.toDegrees(truth.rollRad()),
        Math.toDegrees(truth.pitchRad()),
        simulation.scenario().world().temperatureC(nowS),
        simulation.scenario().world().underWay(nowS));
  }
}
