package io.pitchwatch.command;

import java.io.IOException;
import picocli.CommandLine.Command;

/** The heading of the sensor's board. */
@Command(
    name = "align",
    mixinStandardHelpOptions = true,
    description = "Finds the heading of the sensor's board: one end of the coach is raised.",
    footer = {"", "Stop the daemon first. Exit codes: 0 found, 1 refused, 2 wrong input."})
final class AlignCommand extends CareCommand {

  @Override
  CareStep care(BenchPost post) throws InterruptedException, IOException {
    post.say("Waiting for half a minute of steady floor, before anything is raised");
    if (!post.steady()) {
      return CareStep.refused(post.reason());
    }
    CareStep before = post.upkeep().alignBefore(post.nowNanos());
    if (!before.done()) {
      return before;
    }
    post.say("Taken. Now " + post.upkeep().guide().next() + ".");
    String end = ask(post, "Which end went up? front or rear:");
    if (!end.equals("front") && !end.equals("rear")) {
      return CareStep.refused("the answer was \"" + end + "\"; allowed is front or rear");
    }
    post.say("Waiting for half a minute of steady floor");
    if (!post.steady()) {
      return CareStep.refused(post.reason());
    }
    return post.upkeep().alignAfter(end.equals("front"), post.nowNanos(), post.date());
  }
}
