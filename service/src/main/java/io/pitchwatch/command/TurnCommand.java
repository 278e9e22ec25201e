package io.pitchwatch.command;

import io.pitchwatch.levelling.Site;
import io.pitchwatch.levelling.TurnText;
import io.pitchwatch.levelling.Turning;
import io.pitchwatch.levelling.Turning.Headings;
import io.pitchwatch.mqtt.tree.TurnDocument;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What turning the coach on the same slope would bring. */
@Command(
    name = "turn",
    mixinStandardHelpOptions = true,
    description = "Says what turning the coach on the same slope would bring, heading by heading.",
    footer = {"", "Needs no sensor and no broker. Exit codes: 0 told, 2 wrong input."})
final class TurnCommand implements Callable<Integer> {

  @Spec CommandSpec spec;
  @Mixin LeanOptions lean;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Site> site = lean.site("turn", err);
    if (site.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    Headings headings =
        Patience.over(err, "planning each heading", () -> Turning.around(site.get()));
    PrintWriter out = spec.commandLine().getOut();
    out.print(lean.json ? TurnDocument.of(headings) + "\n" : TurnText.of(headings));
    out.flush();
    return ExitCode.GOOD;
  }
}
