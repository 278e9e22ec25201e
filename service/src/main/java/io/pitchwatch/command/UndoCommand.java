package io.pitchwatch.command;

import java.util.Optional;
import picocli.CommandLine.Command;

/** Back to before the last change. */
@Command(
    name = "undo",
    mixinStandardHelpOptions = true,
    description = "Goes back to before the last zero, heading or calibration; twice: forth again.",
    footer = {"", "Stop the daemon first. Exit codes: 0 done, 1 nothing to undo, 2 wrong input."})
final class UndoCommand extends CareCommand {

  @Override
  CareStep care(BenchPost post) {
    return post.upkeep().undo(Optional.empty());
  }
}
