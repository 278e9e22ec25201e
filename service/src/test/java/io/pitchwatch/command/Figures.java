package io.pitchwatch.command;

import io.pitchwatch.floor.FloorFilterBench;
import io.pitchwatch.mqtt.Await;
import io.pitchwatch.mqtt.BrokerProcess;
import io.pitchwatch.mqtt.Mosquitto;
import io.pitchwatch.mqtt.Observer;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Prints what the daemon costs, measured on this machine as a process on Mosquitto, beside a bare
 * JVM that only samples and holds a connection: {@code mvn -q -DskipTests -Pbench verify}.
 */
final class Figures {

  private static final Path LAUNCHER = Path.of("target/dist/bin/pitchwatch");
  private static final int STARTS = 5;
  private static final int WATCHED_S = 60;
  private static final int SETTLED_S = 40;

  /** Clock ticks a second in /proc/PID/stat: USER_HZ, 100 on every Linux (man 5 proc). */
  private static final double TICKS_HZ = 100;

  private final Path directory;
  private final BrokerProcess broker;
  private final Path scenario;

  private Figures(Path directory, BrokerProcess broker) throws IOException {
    this.directory = directory;
    this.broker = broker;
    this.scenario = Scenarios.unpack("level-night", directory).orElseThrow();
  }

  /** Measures and prints. */
  public static void main(String[] arguments) throws Exception {
    // The client library tells every packet; a table is wanted.
    java.util.logging.LogManager.getLogManager().reset();
    Path directory = Files.createTempDirectory("pitchwatch-figures");
    try (BrokerProcess broker = new Mosquitto(directory).start()) {
      new Figures(directory, broker).print();
    }
  }

  private void print() throws Exception {
    System.out.println("| what | figure |\n|---|---|");
    double[] starts = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      starts[i] = secondsToFirstValue();
    }
    Arrays.sort(starts);
    row("start to first value on the broker, median of " + STARTS, "%.2f s", starts[STARTS / 2]);
    long bareKib = residentKib(bare());
    Process daemon = launch();
    await(SETTLED_S);
    double before = cpuSeconds(daemon);
    long startNanos = System.nanoTime();
    await(WATCHED_S);
    double share = (cpuSeconds(daemon) - before) / ((System.nanoTime() - startNanos) / 1e9);
    row("CPU share at 100 Hz, " + WATCHED_S + " s, one core = 100 %%", "%.2f %%", 100 * share);
    long daemonKib = residentKib(daemon);
    row("resident, daemon with broker = other and page", "%.1f MiB", daemonKib / 1024.0);
    row("resident, bare JVM with Pi4J at 100 Hz and Paho", "%.1f MiB", bareKib / 1024.0);
    row("ratio of the two", "%.2f", (double) daemonKib / bareKib);
    double nanos = nanosPerSample();
    row("core, per sample (JMH)", "%.0f ns", nanos);
    row("core, times real time at 100 Hz", "%.0f", 1e9 / 100 / nanos);
  }

  private static void row(String what, String format, double figure) {
    System.out.printf(Locale.ROOT, "| " + what + " | " + format + " |%n", figure);
  }

  private Process launch() throws IOException {
    return start(
        List.of(
            LAUNCHER.toString(),
            "demo",
            "--scenario",
            scenario.toString(),
            "--broker",
            broker.address().toString(),
            "--user",
            broker.daemon().user(),
            "--password-file",
            broker.daemon().passwordFile().toString()));
  }

  private Process bare() throws Exception {
    List<String> command = new ArrayList<>(List.of("java", "-XX:+UseSerialGC"));
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xms8m", "-Xmx96m", "-Xss512k", "-cp"));
    command.add("target/dist/lib/*" + File.pathSeparator + Path.of("target", "test-classes"));
    command.addAll(
        List.of(
            BareJvm.class.getName(),
            scenario.toString(),
            "tcp://" + broker.address().host() + ":" + broker.address().port(),
            broker.daemon().user(),
            Files.readString(broker.daemon().passwordFile()).strip()));
    Process process = start(command);
    await(SETTLED_S);
    return process;
  }

  private Process start(List<String> command) throws IOException {
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(
                ProcessBuilder.Redirect.appendTo(directory.resolve("said.log").toFile()))
            .start();
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    return process;
  }

  private double secondsToFirstValue() throws Exception {
    try (Observer observer = broker.dashboard().hear("homie/5/heron/floor/roll")) {
      long startNanos = System.nanoTime();
      Process daemon = launch();
      Await.until("a value", () -> !observer.last("homie/5/heron/floor/roll").orElse("").isEmpty());
      double seconds = (System.nanoTime() - startNanos) / 1e9;
      daemon.destroy();
      daemon.waitFor(20, TimeUnit.SECONDS);
      return seconds;
    }
  }

  private static double cpuSeconds(Process process) throws IOException {
    String stat = Files.readString(Path.of("/proc/" + process.pid() + "/stat"));
    String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
    return (Double.parseDouble(fields[11]) + Double.parseDouble(fields[12])) / TICKS_HZ;
  }

  /** Resident memory, and ends the process. */
  private static long residentKib(Process process) throws IOException {
    try {
      return Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
          .filter(line -> line.startsWith("VmRSS:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
          .findFirst()
          .orElseThrow();
    } finally {
      process.destroy();
    }
  }

  private static double nanosPerSample() throws RunnerException {
    RunResult result =
        new Runner(
                new OptionsBuilder()
                    .include(FloorFilterBench.class.getSimpleName())
                    .forks(1)
                    .warmupIterations(3)
                    .warmupTime(org.openjdk.jmh.runner.options.TimeValue.seconds(1))
                    .measurementIterations(5)
                    .measurementTime(org.openjdk.jmh.runner.options.TimeValue.seconds(1))
                    .verbosity(org.openjdk.jmh.runner.options.VerboseMode.SILENT)
                    .build())
            .runSingle();
    return result.getPrimaryResult().getScore();
  }

  /** Real time must pass for a share of it to be measured. */
  private static void await(int seconds) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    while (System.nanoTime() < end) {
      LockSupport.parkNanos(end - System.nanoTime());
    }
  }
}
