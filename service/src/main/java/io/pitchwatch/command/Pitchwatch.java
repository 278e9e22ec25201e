package io.pitchwatch.command;

import java.io.PrintWriter;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The launcher: one program, a subcommand each. */
@Command(
    name = "pitchwatch",
    mixinStandardHelpOptions = true,
    version = "pitchwatch 0.1.0",
    synopsisSubcommandLabel = "COMMAND",
    description = "Levels a motor coach with what it carries, and watches the ground under it.",
    footer = {
      "",
      "Exit codes: 0 all well, 1 bad news (outside limits, no safe plan, a fault),",
      "2 wrong input or not known, 70 a fault of this program.",
      "Every command has --help."
    },
    subcommands = {
      RunCommand.class,
      DemoCommand.class,
      RehearseCommand.class,
      HistoryCommand.class,
      PlanCommand.class,
      TurnCommand.class,
      SitesCommand.class,
      CheckCommand.class,
      RecordCommand.class,
      CalibrateCommand.class,
      ZeroCommand.class,
      ReversalCommand.class,
      AlignCommand.class,
      UndoCommand.class,
      DriftCommand.class,
      DoctorCommand.class
    })
public final class Pitchwatch implements Runnable {

  @Spec CommandSpec spec;

  /** Runs the command named by the arguments and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }

  static CommandLine commandLine() {
    return new CommandLine(new Pitchwatch())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setAbbreviatedOptionsAllowed(false)
        .setExecutionExceptionHandler(Pitchwatch::explain);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int explain(Exception fault, CommandLine command, CommandLine.ParseResult parsed) {
    Logger log = LoggerFactory.getLogger(Pitchwatch.class);
    log.debug("fault in {}", command.getCommandName(), fault);
    PrintWriter err = command.getErr();
    err.println("pitchwatch " + command.getCommandName() + ": a fault of this program: " + fault);
    err.println("Run again with PITCHWATCH_LOG=debug for the details, and report them, please.");
    return ExitCode.INTERNAL;
  }
}
