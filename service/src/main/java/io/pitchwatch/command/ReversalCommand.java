package io.pitchwatch.command;

import io.pitchwatch.visit.Guide;
import java.io.IOException;
import picocli.CommandLine.Command;

/** A zero without a level: the coach is turned end for end. */
@Command(
    name = "reversal",
    mixinStandardHelpOptions = true,
    description = "Zeroes without a level: two readings, the coach turned end for end in between.",
    footer = {
      "",
      "Run it once before and once after turning the coach: the first reading is kept.",
      "Stop the daemon first. Exit codes: 0 taken, 1 refused, 2 wrong input."
    })
final class ReversalCommand extends CareCommand {

  @Override
  CareStep care(BenchPost post) throws InterruptedException, IOException {
    boolean second = post.upkeep().guide().task() == Guide.Task.REVERSAL;
    if (second) {
      String answer =
          ask(
              post,
              "A first reading is there. Has the coach been turned end for end on the same spot?"
                  + " yes, or no to begin anew:");
      if (!answer.equals("yes") && !answer.equals("no")) {
        return CareStep.refused("the answer was \"" + answer + "\"; allowed is yes or no");
      }
      second = answer.equals("yes");
      if (!second) {
        post.upkeep().cancel(Guide.Task.REVERSAL);
      }
    }
    post.say("Waiting for half a minute of steady floor");
    if (!post.steady()) {
      return CareStep.refused(post.reason());
    }
    if (second) {
      return post.upkeep().reversalSecond(post.nowNanos(), post.date());
    }
    CareStep first = post.upkeep().reversalFirst(post.nowNanos(), post.date());
    return first.done()
        ? CareStep.done(first.said() + "; now " + post.upkeep().guide().next())
        : first;
  }
}
