package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import picocli.CommandLine;

class HelpTest {

  /** The list of commands shows the first line of a description alone. */
  @TestFactory
  Iterable<DynamicTest> everyCommandSaysInItsFirstLineWhatItIsForAndInItsLastHowItEnds() {
    return Pitchwatch.commandLine().getSubcommands().values().stream()
        .map(
            command ->
                DynamicTest.dynamicTest(command.getCommandName(), () -> assertWhole(command)))
        .toList();
  }

  private static void assertWhole(CommandLine command) {
    String first = command.getCommandSpec().usageMessage().description()[0];
    assertTrue(first.endsWith("."), first);
    assertTrue(
        Arrays.stream(command.getCommandSpec().usageMessage().footer())
            .anyMatch(line -> line.contains("Exit codes: 0 ")),
        command.getCommandName() + " --help names no exit codes");
  }
}
