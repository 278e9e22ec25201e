package io.pitchwatch.mqtt.homie;

import java.util.Locale;

/** Levels of {@code $log} (Homie 5.0, "Logging"). */
public enum LogLevel {
  DEBUG,
  INFO,
  WARN,
  ERROR,
  FATAL;

  /** The topic level. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
