package io.pitchwatch.mqtt;

/**
 * Counts the threads that Paho left behind: one that connects waits for ever for its companions
 * when the broker closes the door at the wrong moment (paho.mqtt.java issue 850).
 */
final class StrayThreads {

  private static final String PREFIX = "MQTT Con: ";

  private StrayThreads() {}

  /** Threads that still try to connect the given client, although nobody waits for them. */
  static int count(String clientId) {
    ThreadGroup group = Thread.currentThread().getThreadGroup();
    Thread[] threads = new Thread[group.activeCount() + 16];
    int found = group.enumerate(threads);
    int strays = 0;
    for (int i = 0; i < found; i++) {
      if (threads[i].getName().equals(PREFIX + clientId)) {
        strays++;
      }
    }
    return strays;
  }
}
