package io.pitchwatch.store;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A process that writes to a store as fast as it goes, and says each number once the store has said
 * that it is done.
 */
final class StoreWriter {

  /** After so many there is nothing new to see. */
  private static final int MOST_REFUSALS = 200;

  private StoreWriter() {}

  static Zero zero(int number) {
    return new Zero(UpVector.of(Lean.ofDegrees(number * 1e-4, 0)), 1e-4, 20, "zero " + number);
  }

  /**
   * Writes until it is killed, has written the given number, or was refused often enough; says
   * "trouble" and the troubles, "zero" or "minute" and the number that is written, and "not" where
   * it is not.
   *
   * @param arguments the store's directory; how many minutes; how many of them for each zero
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    int most = Integer.parseInt(arguments[1]);
    int minutesPerZero = Integer.parseInt(arguments[2]);
    Store.Opening opening = Store.open(Path.of(arguments[0]), 0, () -> 1_800_000_000L);
    opening.troubles().forEach(trouble -> out.println("trouble " + trouble.text()));
    try (Store store = opening.store()) {
      int refusals = 0;
      for (int i = 1; i <= most && refusals < MOST_REFUSALS; i++) {
        if (i % minutesPerZero == 0) {
          Written written = store.kept().keepZero("floor", zero(i));
          store.kept().keepText("twin", "number", "" + i);
          out.println(said("zero ", written) + i);
        }
        Written minute = store.history().add(Minutes.numbered(i));
        out.println(said("minute ", minute) + i);
        refusals += minute instanceof Written.Done ? 0 : 1;
      }
    }
  }

  private static String said(String what, Written written) {
    return written instanceof Written.Done ? what : "not " + written + " ";
  }

  /**
   * Starts the process, behind a prefix such as a shell that limits it; it is the caller's to end.
   */
  static Process start(List<String> prefix, Path directory, int most, int minutesPerZero)
      throws IOException {
    List<String> command = new ArrayList<>(prefix);
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx64m",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            StoreWriter.class.getName(),
            directory.toString(),
            "" + most,
            "" + minutesPerZero));
    return new ProcessBuilder(command)
        .redirectError(ProcessBuilder.Redirect.to(new File("/dev/null")))
        .start();
  }

  static BufferedReader lines(Process process) {
    return new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }
}
