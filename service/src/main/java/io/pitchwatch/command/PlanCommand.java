package io.pitchwatch.command;

import io.pitchwatch.levelling.LevelPlanner;
import io.pitchwatch.levelling.Plan;
import io.pitchwatch.levelling.PlanText;
import io.pitchwatch.levelling.PlanVerdict;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.mqtt.tree.PlanDocument;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The levelling plan for a lean given by hand. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Says which pieces go under which tyre, and how far each jack moves.",
    footer = {
      "",
      "Needs no sensor and no broker. Lengths are in the units of the config.",
      "Exit codes: 0 there is a plan, 1 there is no safe plan, 2 wrong input."
    })
final class PlanCommand implements Callable<Integer> {

  @Spec CommandSpec spec;
  @Mixin LeanOptions lean;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Site> site = lean.site("plan", err);
    if (site.isEmpty()) {
      return ExitCode.NOT_KNOWN;
    }
    Plan plan = Patience.over(err, "planning", () -> LevelPlanner.plan(site.get()));
    PrintWriter out = spec.commandLine().getOut();
    out.print(lean.json ? PlanDocument.of(plan) + "\n" : PlanText.of(plan));
    out.flush();
    return plan.verdict() == PlanVerdict.MOVE ? ExitCode.BAD_NEWS : ExitCode.GOOD;
  }
}
