package io.pitchwatch.mqtt.broker;

import io.pitchwatch.mqtt.link.Credentials;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/** The built-in broker alone in a process, so that a test can treat it badly. */
public final class OwnBrokerMain {

  private OwnBrokerMain() {}

  /** Port and directory. */
  public static void main(String[] args) throws InterruptedException {
    Path directory = Path.of(args[1]);
    long begin = System.nanoTime();
    BrokerStart start =
        OwnBroker.start(
            new OwnBrokerSettings(
                "127.0.0.1",
                Integer.parseInt(args[0]),
                directory,
                "homie",
                List.of("homeassistant"),
                new Credentials("pitchwatch", directory.resolve("mqtt-password"))));
    System.out.println(start + " after " + (System.nanoTime() - begin) / 1_000_000 + " ms");
    if (start instanceof BrokerStart.Running running) {
      Runtime.getRuntime().addShutdownHook(new Thread(running.broker()::close));
      new CountDownLatch(1).await();
    }
  }
}
