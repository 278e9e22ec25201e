package io.pitchwatch.mqtt;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.pitchwatch.mqtt.link.Credentials;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Debian's Mosquitto with a password, and with the rights that docs/security.md tells to give. */
public final class Mosquitto extends BrokerProcess {

  private static final Path RIGHTS_PAGE = Path.of("../docs/security.md");

  private final List<String> lines;

  /**
   * One that is not started yet; the test is skipped if there is none, unless nothing may be.
   *
   * @param directory for its files
   * @param lines of its configuration, beside those that all have
   */
  public Mosquitto(Path directory, String... lines) {
    super(directory);
    this.lines = List.of(lines);
    boolean present = Files.isExecutable(program("mosquitto"));
    if (System.getenv("PITCHWATCH_REQUIRE_ALL") == null) {
      assumeTrue(present, "skipped: mosquitto is not installed");
    } else if (!present) {
      throw new AssertionError("mosquitto is not installed, and nothing may be skipped");
    }
    prepare();
  }

  private void prepare() {
    try {
      Files.writeString(daemon().passwordFile(), "daemon-secret\n");
      Files.write(directory().resolve("rights"), documentedRights());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Path users = directory().resolve("users");
    String program = program("mosquitto_passwd").toString();
    run(program, "-b", "-c", users.toString(), "pitchwatch", "daemon-secret");
    run(program, "-b", users.toString(), "dashboard", dashboardPassword());
  }

  /** The lines between the fences after "mosquitto.acl" on the page. */
  private static List<String> documentedRights() throws IOException {
    String page = Files.readString(RIGHTS_PAGE);
    int begin = page.indexOf("```", page.indexOf("mosquitto.acl"));
    int first = page.indexOf('\n', begin) + 1;
    return page.substring(first, page.indexOf("```", first)).lines().toList();
  }

  @Override
  protected List<String> command() throws IOException {
    List<String> config = new ArrayList<>();
    config.add("listener " + address().port() + " 127.0.0.1");
    config.add("user root");
    config.add("persistence false");
    config.add("allow_anonymous false");
    config.add("password_file " + directory().resolve("users"));
    config.add("acl_file " + directory().resolve("rights"));
    config.addAll(lines);
    Path file = directory().resolve("mosquitto.conf");
    Files.write(file, config);
    return List.of(program("mosquitto").toString(), "-c", file.toString());
  }

  @Override
  public Credentials daemon() {
    return new Credentials("pitchwatch", directory().resolve("daemon-password"));
  }

  @Override
  public String dashboardPassword() {
    return "dashboard-secret";
  }

  private static Path program(String name) {
    return Stream.of("/usr/sbin", "/usr/bin", "/usr/local/sbin", "/usr/local/bin")
        .map(directory -> Path.of(directory, name))
        .filter(Files::isExecutable)
        .findFirst()
        .orElse(Path.of("/usr/sbin", name));
  }
}
