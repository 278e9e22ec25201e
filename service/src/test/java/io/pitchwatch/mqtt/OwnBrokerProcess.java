package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.broker.OwnBrokerMain;
import io.pitchwatch.mqtt.broker.PasswordFile;
import io.pitchwatch.mqtt.link.Credentials;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The built-in broker in a small heap of its own. */
public final class OwnBrokerProcess extends BrokerProcess {

  private final List<String> prefix;

  /**
   * One that is not started yet.
   *
   * @param directory for its files
   * @param prefix a command that runs the rest of the line under some limit
   */
  public OwnBrokerProcess(Path directory, String... prefix) {
    super(directory);
    this.prefix = List.of(prefix);
    makePasswords();
  }

  private void makePasswords() {
    try {
      new PasswordFile(daemon().passwordFile()).readOrCreate();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    dashboardPassword();
  }

  @Override
  protected List<String> command() {
    List<String> command = new ArrayList<>(prefix);
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx64m", "-XX:+UseSerialGC", "-XX:-UsePerfData"));
    command.add("-XX:TieredStopAtLevel=1");
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(OwnBrokerMain.class.getName());
    command.add(Integer.toString(address().port()));
    command.add(directory().toString());
    return command;
  }

  @Override
  public Credentials daemon() {
    return new Credentials("pitchwatch", directory().resolve("mqtt-password"));
  }

  @Override
  public String dashboardPassword() {
    return password("dashboard");
  }

  /** The password of one of the other accounts. */
  public String password(String user) {
    try {
      return new PasswordFile(directory().resolve("mqtt-" + user + "-password")).readOrCreate();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
