package io.pitchwatch.command;

import picocli.CommandLine.Command;

/** The floor as it stands is level. */
@Command(
    name = "zero",
    mixinStandardHelpOptions = true,
    description = "Takes the floor as it stands now for level; bring it level by a trusted level.",
    footer = {"", "Stop the daemon first. Exit codes: 0 taken, 1 refused, 2 wrong input."})
final class ZeroCommand extends CareCommand {

  @Override
  CareStep care(BenchPost post) throws InterruptedException {
    post.say("Waiting for half a minute of steady floor");
    if (!post.steady()) {
      return CareStep.refused(post.reason());
    }
    return post.upkeep().zero(post.nowNanos(), post.date());
  }
}
