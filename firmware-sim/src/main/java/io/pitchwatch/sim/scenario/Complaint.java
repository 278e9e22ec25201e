package io.pitchwatch.sim.scenario;

/**
 * One thing wrong with a scenario.
 *
 * @param file in which file
 * @param line on which line, from 1; 0 if none in particular
 * @param key dotted key; empty if none in particular
 * @param found what stands there
 * @param allowed what may stand there
 */
public record Complaint(String file, int line, String key, String found, String allowed) {

  @Override
  public String toString() {
    String where = file + (line > 0 ? ":" + line : "");
    return where + ": " + (key.isEmpty() ? "" : key + ": ") + found + "; allowed: " + allowed;
  }
}
