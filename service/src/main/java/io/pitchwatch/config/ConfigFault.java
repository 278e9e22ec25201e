package io.pitchwatch.config;

/**
 * One thing wrong in the owner's file.
 *
 * @param file name of the file
 * @param line line in it, from 1; 0 when it concerns the whole file
 * @param key path of the key, the second of several {@code [[axle]]} being {@code axle[2]}; empty
 *     when it concerns no key
 * @param found what stands there
 * @param allowed what may stand there
 */
public record ConfigFault(String file, int line, String key, String found, String allowed) {

  /** One line for people: file, line, key, what was found and what is allowed. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(':').append(line);
    }
    if (!key.isEmpty()) {
      text.append(": ").append(key);
    }
    return text.append(": found ").append(found).append("; allowed: ").append(allowed).toString();
  }
}
