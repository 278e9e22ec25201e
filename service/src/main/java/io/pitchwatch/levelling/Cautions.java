package io.pitchwatch.levelling;

import java.util.List;

/**
 * What is said with every plan, because people are hurt by coaches that roll off blocks or jacks.
 */
public final class Cautions {

  /** One sentence each, most urgent first. */
  public static final List<String> ALL =
      List.of(
          "Chock the wheels that stay on the ground and set the parking brake before anyone goes"
              + " near.",
          "Nobody goes under the coach while it stands on jacks or blocks alone.",
          "Keep the braked rear tyres on the ground.",
          "Stay inside the rated load of jacks, blocks and tyres.",
          "Jacks are for levelling, not for lifting the coach to work under it.",
          "Drive on with someone guiding you from where you can see them.",
          "The site's own rules, the coach maker's instructions and a qualified technician come"
              + " before this program.",
          "The figures are estimates from one sensor and from what the owner entered.");

  private Cautions() {}
}
