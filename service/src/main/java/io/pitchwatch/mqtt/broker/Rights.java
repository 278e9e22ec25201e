package io.pitchwatch.mqtt.broker;

import java.util.List;

/**
 * Who may publish where on the built-in broker. Everybody with an account may read everything.
 *
 * @param tree first level of the devices' topics
 * @param hubPrefixes first levels of the hubs' topics
 */
record Rights(String tree, List<String> hubPrefixes) {

  private static final String VERSION = "5";
  private static final String ANSWERS = "pitchwatch";
  private static final String COMMAND = "set";
  private static final String STATUS = "status";

  /** Levels of a command's topic: tree, 5, device, node, property, set. */
  private static final int COMMAND_LEVELS = 6;

  Rights {
    hubPrefixes = List.copyOf(hubPrefixes);
  }

  /**
   * Whether an account of this kind may publish to this topic.
   *
   * @param levels of the topic
   */
  boolean mayPublish(Account.Kind kind, List<String> levels) {
    return switch (kind) {
      case DAEMON -> isDevice(levels) || isHub(levels) || levels.get(0).equals(ANSWERS);
      case DASHBOARD -> isCommand(levels) || isBirth(levels);
      case GUEST -> false;
    };
  }

  private boolean isDevice(List<String> levels) {
    return levels.size() > 2 && levels.get(0).equals(tree) && levels.get(1).equals(VERSION);
  }

  private boolean isHub(List<String> levels) {
    return hubPrefixes.contains(levels.get(0));
  }

  private boolean isCommand(List<String> levels) {
    return isDevice(levels)
        && levels.size() == COMMAND_LEVELS
        && levels.get(COMMAND_LEVELS - 1).equals(COMMAND)
        && levels.stream().noneMatch(level -> level.startsWith("$"));
  }

  private boolean isBirth(List<String> levels) {
    return levels.size() == 2 && isHub(levels) && levels.get(1).equals(STATUS);
  }
}
