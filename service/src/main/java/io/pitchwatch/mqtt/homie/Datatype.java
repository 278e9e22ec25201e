package io.pitchwatch.mqtt.homie;

import java.util.Locale;

/** The datatypes of the convention that this service uses (Homie 5.0, "Payloads"). */
public enum Datatype {
  FLOAT,
  BOOLEAN,
  STRING,
  ENUM,
  DATETIME,
  JSON;

  /** The word in the description. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
