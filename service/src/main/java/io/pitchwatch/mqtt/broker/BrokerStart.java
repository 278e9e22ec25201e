package io.pitchwatch.mqtt.broker;

/** What became of starting the built-in broker. */
public sealed interface BrokerStart {

  /**
   * It runs.
   *
   * @param broker to be closed at the end
   */
  record Running(OwnBroker broker) implements BrokerStart {}

  /**
   * It does not run.
   *
   * @param why one sentence for people: what, and what to do
   */
  record Failed(String why) implements BrokerStart {}
}
