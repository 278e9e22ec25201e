package io.pitchwatch.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.mqtt.Await;
import io.pitchwatch.mqtt.BrokerProcess;
import io.pitchwatch.mqtt.Mosquitto;
import io.pitchwatch.mqtt.Observer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The daemon as a process on Mosquitto, and what is left on the broker when things go wrong. */
class DaemonIT {

  private static final String ROOT = "homie/5/heron/";

  /** "Within 10 s of the last good sample", and what a loaded machine takes to notice. */
  private static final Duration UNKNOWN_WITHIN = Duration.ofSeconds(12);

  private static final String STILL =
      """
      seed = 5
      [coach]
      id = "heron"
      [[axle]]
      id = "front"
      position = "0 mm"
      track = "2000 mm"
      load = "3000 kg"
      footprint = "250 mm"
      [[axle]]
      id = "rear"
      position = "-5000 mm"
      track = "1900 mm"
      load = "5000 kg"
      footprint = "590 mm"
      [[fridge]]
      id = "galley"
      side-to-side = "3 deg"
      front-to-back = "6 deg"
      [sensor]
      chip = "adxl345"
      [site]
      roll = "1 deg"
      pitch = "-2 deg"
      """;

  @TempDir Path directory;
  private Path brokerDirectory = Path.of("");

  @BeforeEach
  void makeRoomForTheBroker() throws Exception {
    brokerDirectory = Files.createDirectory(directory.resolve("broker"));
  }

  private BrokerProcess openBroker() {
    return new Mosquitto(brokerDirectory).start();
  }

  @Test
  void aKilledDaemonIsLostAndComesBack() throws Exception {
    try (BrokerProcess broker = openBroker();
        Observer observer = broker.dashboard().hear(ROOT + "#")) {
      try (DaemonProcess daemon = DaemonProcess.start(directory, STILL, broker)) {
        observer.awaitLast(ROOT + "floor/state", "steady");
        observer.awaitLast(ROOT + "floor/verdict", "near-enough");
        daemon.kill();
        observer.awaitLast(ROOT + "$state", "lost");
      }
      try (DaemonProcess again = DaemonProcess.start(directory, STILL, broker)) {
        observer.awaitLast(ROOT + "$state", "ready");
        observer.awaitLast(ROOT + "floor/state", "steady");
        assertTrue(again.isAlive(), again::said);
      }
    }
  }

  @Test
  void aStoppedDaemonLeavesNothingMeasuredStanding() throws Exception {
    try (BrokerProcess broker = openBroker();
        Observer observer = broker.dashboard().hear(ROOT + "#");
        DaemonProcess daemon = DaemonProcess.start(directory, STILL, broker)) {
      observer.awaitLast(ROOT + "floor/state", "steady");
      daemon.stop();
      observer.awaitLast(ROOT + "$state", "disconnected");
      assertEquals("unknown", observer.last(ROOT + "floor/state").orElseThrow());
      assertEquals("unknown", observer.last(ROOT + "floor/verdict").orElseThrow());
      assertEquals("", observer.last(ROOT + "floor/roll").orElseThrow());
      assertEquals("", observer.last(ROOT + "fridge-galley/within").orElseThrow());
    }
  }

  @Test
  void aStormOfMissingAcknowledgesIsUnknownAndThenOver() throws Exception {
    String storm =
        STILL
            + """
            [[event]]
            at = "12 s"
            does = "bus-fault"
            kind = "nak"
            lasts = "25 s"
            """;
    assertUnknownThenSteady(storm);
  }

  @Test
  void aStuckBusIsUnknownAndThenOver() throws Exception {
    String stuck =
        STILL
            + """
            [[event]]
            at = "12 s"
            does = "bus-fault"
            kind = "stuck"
            lasts = "25 s"
            """;
    assertUnknownThenSteady(stuck);
  }

  private void assertUnknownThenSteady(String scenario) throws Exception {
    try (BrokerProcess broker = openBroker();
        Observer observer = broker.dashboard().hear(ROOT + "#");
        DaemonProcess daemon = DaemonProcess.start(directory, scenario, broker)) {
      observer.awaitLast(ROOT + "floor/state", "steady");
      // The fault begins 12 s after the start; the figures must be gone 10 s later.
      Await.until(
          "unknown; the daemon said " + daemon.said(),
          Duration.ofSeconds(12).plus(UNKNOWN_WITHIN),
          () -> observer.last(ROOT + "floor/state").orElse("").equals("unknown"));
      observer.awaitLast(ROOT + "floor/verdict", "unknown");
      observer.awaitLast(ROOT + "floor/roll", "");
      observer.awaitLast(ROOT + "sensor-1/health", "failed");
      Await.until(
          "steady again; the daemon said " + daemon.said(),
          Duration.ofSeconds(45),
          () -> observer.last(ROOT + "floor/state").orElse("").equals("steady"));
    }
  }

  @Test
  void aKilledBrokerIsFoundAgainWithTheWholeTree() throws Exception {
    try (BrokerProcess broker = openBroker();
        DaemonProcess daemon = DaemonProcess.start(directory, STILL, broker)) {
      try (Observer before = broker.dashboard().hear(ROOT + "#")) {
        before.awaitLast(ROOT + "floor/state", "steady");
      }
      broker.kill();
      broker.start();
      try (Observer after = broker.dashboard().hear(ROOT + "#")) {
        after.awaitLast(ROOT + "$state", "ready");
        after.awaitLast(ROOT + "floor/state", "steady");
        after.awaitLast(ROOT + "fridge-galley/within", "true");
        after.awaitLast(ROOT + "visit/stay", "stay");
      }
      assertTrue(daemon.isAlive(), daemon::said);
    }
  }
}
