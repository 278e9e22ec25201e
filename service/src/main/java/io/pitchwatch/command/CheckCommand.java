package io.pitchwatch.command;

import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.MqttSettings;
import io.pitchwatch.mqtt.check.CheckClient;
import io.pitchwatch.mqtt.check.CheckOutcome;
import io.pitchwatch.mqtt.check.CheckPlan;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.link.BrokerAddress;
import io.pitchwatch.mqtt.link.Credentials;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The remote check: asks the daemon for a fresh reading, from anywhere the broker is reached. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Asks the daemon over MQTT how the coach stands right now.",
    footer = {
      "",
      "Name the coach with --coach, or give the config of a coach with --config.",
      "Exit codes: 0 within limits, 1 outside, 2 not known (daemon away, sensor failed,",
      "reading old, moving, broker out of reach, credentials refused)."
    })
final class CheckCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Option(
      names = "--url",
      paramLabel = "URL",
      description = "The broker, mqtt:// or mqtts:// (default: mqtt://127.0.0.1:1883).")
  Optional<String> url = Optional.empty();

  @Option(names = "--coach", paramLabel = "ID", description = "The coach's id.")
  Optional<String> coach = Optional.empty();

  @Option(names = "--user", paramLabel = "NAME", description = "User of the broker.")
  Optional<String> user = Optional.empty();

  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = "File with that user's password on its first line.")
  Optional<Path> passwordFile = Optional.empty();

  @Option(
      names = "--ca-file",
      paramLabel = "FILE",
      description = "Certificates, PEM, that vouch for the broker; with mqtts:// only.")
  Optional<Path> caFile = Optional.empty();

  @Option(names = "--tree", paramLabel = "ROOT", description = "Root topic (default: homie).")
  Optional<String> tree = Optional.empty();

  @Option(
      names = "--config",
      paramLabel = "FILE",
      description = "Take whatever is not given here from the coach's config.")
  Optional<Path> config = Optional.empty();

  @Option(names = "--json", description = "Print the daemon's answer as it came.")
  boolean json;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Config> described = Optional.empty();
    if (config.isPresent()) {
      described = ConfigOption.read(config.get(), err);
      if (described.isEmpty()) {
        return ExitCode.NOT_KNOWN;
      }
    }
    try {
      return told(CheckClient.ask(plan(described)));
    } catch (IllegalArgumentException e) {
      err.println("check: " + e.getMessage());
      return ExitCode.NOT_KNOWN;
    }
  }

  private CheckPlan plan(Optional<Config> described) {
    String device =
        coach
            .or(() -> described.map(c -> c.coach().id()))
            .orElseThrow(() -> new IllegalArgumentException("name the coach: --coach ID"));
    if (user.isPresent() != passwordFile.isPresent()) {
      throw new IllegalArgumentException("--user and --password-file go together");
    }
    Optional<MqttSettings> kept = described.map(c -> Edges.mqtt(c, 0));
    Optional<Credentials> given = user.map(name -> new Credentials(name, passwordFile.get()));
    BrokerAddress local = new BrokerAddress("127.0.0.1", 1883, false);
    return new CheckPlan(
        url.map(BrokerAddress::parse).or(() -> kept.map(MqttSettings::broker)).orElse(local),
        given.or(() -> kept.flatMap(MqttSettings::credentials)),
        caFile.or(() -> kept.flatMap(MqttSettings::caFile)),
        new DeviceTopics(
            tree.or(() -> kept.map(MqttSettings::tree)).orElse(MqttSettings.DEFAULT_TREE), device),
        CheckPlan.DEFAULT_PATIENCE);
  }

  private int told(CheckOutcome outcome) {
    if (outcome instanceof CheckOutcome.NoAnswer none) {
      spec.commandLine().getErr().println("not known: " + none.why());
      return ExitCode.NOT_KNOWN;
    }
    CheckOutcome.Answer answer = (CheckOutcome.Answer) outcome;
    PrintWriter out = spec.commandLine().getOut();
    out.println(json ? answer.json() : CheckText.of(answer.json()));
    out.flush();
    return answer.fresh() ? code(answer.verdict()) : ExitCode.NOT_KNOWN;
  }

  private static int code(Verdict verdict) {
    return switch (verdict) {
      case GOOD, NEAR_ENOUGH -> ExitCode.GOOD;
      case OUTSIDE -> ExitCode.BAD_NEWS;
      case UNKNOWN -> ExitCode.NOT_KNOWN;
    };
  }
}
