package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.sensing.Chip;
import io.pitchwatch.sensing.Sampler;
import java.util.concurrent.locks.LockSupport;
import org.eclipse.paho.mqttv5.client.MqttClient;
import org.eclipse.paho.mqttv5.client.MqttConnectionOptions;
import org.eclipse.paho.mqttv5.client.persist.MemoryPersistence;

/**
 * What a JVM needs that does nothing but sample a chip through Pi4J on a simulated bus at 100 Hz
 * and hold one Paho connection: the measure for the daemon's memory.
 */
final class BareJvm {

  private BareJvm() {}

  /** Arguments: scenario file, broker as tcp://host:port, user, password. Runs until killed. */
  public static void main(String[] arguments) throws Exception {
    MqttClient client = new MqttClient(arguments[1], "bare", new MemoryPersistence());
    try (Pi4jBus buses = BusChoice.simulated(arguments[0]).open()) {
      MqttConnectionOptions options = new MqttConnectionOptions();
      options.setUserName(arguments[2]);
      options.setPassword(arguments[3].getBytes(java.nio.charset.StandardCharsets.UTF_8));
      client.connect(options);
      Sampler sampler = new Sampler(Chip.ADXL345.driver(buses.at(1, 0x53)), (nanos, x, y, z) -> {});
      while (true) {
        long due = sampler.poll(System.nanoTime());
        LockSupport.parkNanos(Math.max(1_000_000L, due - System.nanoTime()));
      }
    }
  }
}
