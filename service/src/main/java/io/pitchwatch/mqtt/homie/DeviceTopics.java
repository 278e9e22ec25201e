package io.pitchwatch.mqtt.homie;

/**
 * The one place where topics of a device are put together (Homie 5.0, "Base Topic", "Topology").
 *
 * @param tree first level; the convention lets the owner choose it
 * @param device id of the device
 */
public record DeviceTopics(String tree, String device) {

  /** The convention's major version; this level may not be renamed. */
  private static final String VERSION = "5";

  /**
   * Checks both.
   *
   * @throws IllegalArgumentException if the tree is not one level of a topic, or the id malformed
   */
  public DeviceTopics {
    if (new Topic(tree).text().indexOf('/') >= 0 || tree.startsWith("$")) {
      throw new IllegalArgumentException(
          "tree is \"" + tree + "\"; it must be one level of a topic and not start with $");
    }
    Ids.require("device id", device);
  }

  /** All of the device lies under this topic. */
  public Topic base() {
    return new Topic(tree + "/" + VERSION + "/" + device);
  }

  /** All devices of the tree lie under this topic. */
  public Topic root() {
    return new Topic(tree + "/" + VERSION);
  }

  /** The filter that matches all of the device. */
  public String everything() {
    return base() + "/#";
  }

  /** Where the device is in its life. */
  public Topic state() {
    return new Topic(base() + "/$state");
  }

  /** The document that describes nodes and properties. */
  public Topic description() {
    return new Topic(base() + "/$description");
  }

  /**
   * Log messages of one level; never retained.
   *
   * @param level how bad
   */
  public Topic log(LogLevel level) {
    return new Topic(base() + "/$log/" + level.word());
  }

  /**
   * One alert; retained while it stands.
   *
   * @param id lasting name of the alert
   * @throws IllegalArgumentException if the id is malformed
   */
  public Topic alert(String id) {
    return new Topic(base() + "/$alert/" + Ids.require("alert id", id));
  }

  /**
   * The value of a property.
   *
   * @param node the node
   * @param property one of its properties
   */
  public Topic value(Node node, Property property) {
    return new Topic(base() + "/" + node.id() + "/" + property.id());
  }

  /**
   * Where commands to a property arrive.
   *
   * @param node the node
   * @param property one of its properties
   */
  public Topic set(Node node, Property property) {
    return new Topic(value(node, property) + "/set");
  }

  /** Where the questions of the remote check arrive. */
  public Topic check() {
    return new Topic(base() + "/upkeep/check/set");
  }

  /** Where requests for the history arrive. */
  public Topic history() {
    return new Topic(base() + "/upkeep/history/set");
  }

  /**
   * Where the answer to a request goes that names a token.
   *
   * @param token of a-z, 0-9 and -
   * @throws IllegalArgumentException if it is not
   */
  public Topic historyAnswer(String token) {
    return new Topic(base() + "/upkeep/history/answer/" + Ids.require("reply", token));
  }
}
