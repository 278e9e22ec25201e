package io.pitchwatch.mqtt.homie;

import java.util.Locale;

/** Values of {@code $state} (Homie 5.0, "Device Lifecycle"). */
public enum DeviceState {
  INIT,
  READY,
  DISCONNECTED,
  SLEEPING,
  LOST;

  /** The payload. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
