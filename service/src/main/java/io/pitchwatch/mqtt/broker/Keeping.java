package io.pitchwatch.mqtt.broker;

import java.util.List;

/**
 * What of the tree is kept on disk. The daemon says everything anew whenever it connects; so what
 * was measured is not kept: it would only wear out the card, and after a power cut it would stand
 * there as old news until the daemon is back. What people said is kept, and so are alerts.
 *
 * @param tree first level of the devices' topics
 */
record Keeping(String tree) {

  private static final int NODE_LEVEL = 3;
  private static final String VISIT = "visit";
  private static final String ALERT = "$alert";

  /**
   * Whether a message outlives the process.
   *
   * @param levels of its topic
   */
  boolean outlives(List<String> levels) {
    if (!levels.get(0).equals(tree)) {
      return false;
    }
    String node = levels.size() > NODE_LEVEL ? levels.get(NODE_LEVEL) : "";
    return node.equals(VISIT) || node.equals(ALERT);
  }
}
