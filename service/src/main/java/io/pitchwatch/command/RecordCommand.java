package io.pitchwatch.command;

import io.pitchwatch.config.SpanText;
import io.pitchwatch.sensing.Recorder;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Raw samples to a file that the simulated coach can play again. */
@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    description = "Records the sensor's raw samples to a CSV file that a scenario can play again.",
    footer = {
      "",
      "Columns: t_s,ax_g,ay_g,az_g and temp_c where the chip has a thermometer. The file appears",
      "when it is complete; Ctrl-C ends it early and keeps what there is. Stop the daemon first.",
      "Exit codes: 0 recorded, 1 nothing recorded, 2 wrong input."
    })
final class RecordCommand implements Callable<Integer> {

  private static final long TIDY_SECONDS = 3;

  @Spec CommandSpec spec;
  @Mixin BenchOption bench;

  @Option(
      names = "--for",
      required = true,
      paramLabel = "TIME",
      description = "For how long, such as \"10 min\".")
  String span;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "Where to; an existing file is never overwritten without --force.")
  Path file;

  @Option(names = "--force", description = "Overwrite the file.")
  boolean force;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    SpanText parsed = SpanText.parse(span);
    Optional<String> wrong =
        parsed instanceof SpanText.Wrong found ? Optional.of("--for: " + found.why()) : wrongFile();
    if (wrong.isPresent()) {
      err.println(wrong.get());
      return ExitCode.NOT_KNOWN;
    }
    long forNanos = ((SpanText.Known) parsed).nanos();
    return bench.with(err, at -> record(at, forNanos));
  }

  private Optional<String> wrongFile() {
    Path parent = file.toAbsolutePath().getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return Optional.of("--out is " + file + "; the directory " + parent + " does not exist");
    }
    if (Files.isDirectory(file)) {
      return Optional.of("--out is " + file + ", a directory; name a file in it");
    }
    return Files.exists(file) && !force
        ? Optional.of("--out is " + file + ", which exists; --force overwrites it")
        : Optional.empty();
  }

  private int record(Workbench at, long forNanos) throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    RecordingSession session = new RecordingSession(at.driver(), file, forNanos, out);
    CountDownLatch over = new CountDownLatch(1);
    Thread stop = new Thread(() -> stop(session, over), "stop");
    Runtime.getRuntime().addShutdownHook(stop);
    try {
      out.println(
          "Recording sensor " + at.sensor().id() + " for " + SpanText.of(forNanos) + " to " + file);
      out.flush();
      return told(session, session.run(at));
    } finally {
      over.countDown();
      forget(stop);
    }
  }

  private int told(RecordingSession session, Recorder.Outcome outcome) {
    if (outcome instanceof Recorder.Outcome.Failed failed) {
      spec.commandLine().getErr().println("Nothing recorded: " + failed.text());
      return ExitCode.BAD_NEWS;
    }
    Recorder.Outcome.Written written = (Recorder.Outcome.Written) outcome;
    String lost =
        session.gaps() == 0 ? "none lost" : "samples were lost " + session.gaps() + " times";
    PrintWriter out = spec.commandLine().getOut();
    out.println(
        written.rows()
            + " samples over "
            + SpanText.of(Math.round(written.seconds() * 1e9))
            + ", "
            + lost
            + ": "
            + written.file());
    out.flush();
    return ExitCode.GOOD;
  }

  /** The process must not end before the file is under its name. */
  private static void stop(RecordingSession session, CountDownLatch over) {
    session.stop();
    try {
      if (!over.await(TIDY_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("the recording could not be ended in time; what there is is in .part");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is ending already, and that hook is why.
    }
  }
}
