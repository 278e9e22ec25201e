package io.pitchwatch.page;

import io.pitchwatch.coach.Coach;

/**
 * What the page's server is told.
 *
 * @param bind address to listen on; loopback unless the owner says otherwise
 * @param port TCP port, 0 for any free one
 * @param coach the coach, whose figures the page needs to speak in millimetres and to draw
 * @param tree root topic of the tree
 * @param broker where the page finds the broker
 * @param signIn whether the broker asks for a user and password
 */
public record PageSettings(
    String bind, int port, Coach coach, String tree, BrokerAddress broker, boolean signIn) {

  /** Only this machine. */
  public static final String LOOPBACK = "127.0.0.1";

  /** Checks the port and the tree. */
  public PageSettings {
    if (port < 0 || port > 65535) {
      throw new IllegalArgumentException("port is " + port + "; it must be 0 to 65535");
    }
    if (tree.isEmpty() || tree.contains("#") || tree.contains("+") || tree.contains("/")) {
      throw new IllegalArgumentException(
          "tree is \"" + tree + "\"; it must be one level of a topic, without # + or /");
    }
  }
}
