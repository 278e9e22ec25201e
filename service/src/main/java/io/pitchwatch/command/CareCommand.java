package io.pitchwatch.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the commands that look after one sensor have in common. */
abstract class CareCommand implements Callable<Integer> {

  @Spec CommandSpec spec;
  @Mixin BenchOption bench;

  private final BufferedReader keyboard =
      new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));

  /**
   * Does it.
   *
   * @return what came of it
   */
  abstract CareStep care(BenchPost post) throws InterruptedException, IOException;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    return bench.with(spec.commandLine().getErr(), at -> told(at, out));
  }

  private int told(Workbench at, PrintWriter out) throws InterruptedException {
    try (BenchPost post = new BenchPost(at, out)) {
      CareStep step = care(post);
      String text = sentence(step.said());
      if (!step.done()) {
        spec.commandLine().getErr().println("Nothing was changed: " + text);
        return ExitCode.BAD_NEWS;
      }
      post.say(text);
      String undo = post.upkeep().guide().undo();
      if (!undo.isEmpty()) {
        post.say("pitchwatch undo goes back to: " + undo + ".");
      }
      return ExitCode.GOOD;
    } catch (IOException e) {
      spec.commandLine().getErr().println("The keyboard cannot be read: " + e.getMessage());
      return ExitCode.NOT_KNOWN;
    }
  }

  private static String sentence(String text) {
    return text.isEmpty() ? "" : Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
  }

  /** Waits for a line from the keyboard; empty when the input ended. */
  String ask(BenchPost post, String question) throws IOException {
    post.say(question);
    String line = keyboard.readLine();
    return line == null ? "" : line.strip();
  }
}
