package io.pitchwatch.command;

import io.pitchwatch.attitude.TemperatureDrift;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What was learnt of a sensor's drift with temperature. */
@Command(
    name = "drift",
    mixinStandardHelpOptions = true,
    description = "Says what was learnt of a sensor's drift with temperature, or forgets it.",
    footer = {
      "",
      "It is learnt by the daemon while the coach is parked. Stop the daemon first.",
      "Exit codes: 0 said or forgotten, 2 wrong input."
    })
final class DriftCommand extends CareCommand {

  @Option(names = "--forget", description = "Forget it, as after a chip was replaced.")
  boolean forget;

  @Override
  CareStep care(BenchPost post) {
    return forget
        ? post.upkeep().forgetDrift(Optional.empty())
        : CareStep.done(words(post.post().drift().inFloor()));
  }

  private static String words(TemperatureDrift drift) {
    return drift.isLearnt()
        ? DriftAdvice.learnt(drift)
        : "nothing was learnt of a drift with temperature yet";
  }
}
