package io.pitchwatch.alarms;

import io.pitchwatch.alarms.SensorTrust.Trust;

/** A sensor is lost, or is not to be believed. */
final class SensorAlarm implements AlarmSource {

  private final int index;
  private final Trust trust;
  private final AlarmRule rule;

  private SensorAlarm(int index, Trust trust, AlarmRule rule) {
    this.index = index;
    this.trust = trust;
    this.rule = rule;
  }

  /** At once, under way too: without it nothing else is known. */
  static SensorAlarm lost(int index, String id) {
    AlarmRule rule =
        new AlarmRule(
            "sensor-" + id + "-lost", Priority.HIGH, 0, Times.seconds(30), 0, false, false);
    return new SensorAlarm(index, Trust.LOST, rule);
  }

  static SensorAlarm doubtful(int index, String id) {
    AlarmRule rule =
        new AlarmRule(
            "sensor-" + id + "-doubtful",
            Priority.MEDIUM,
            Times.minutes(10),
            Times.minutes(10),
            0,
            false,
            false);
    return new SensorAlarm(index, Trust.DOUBTFUL, rule);
  }

  @Override
  public AlarmRule rule() {
    return rule;
  }

  @Override
  public double excess(Situation situation) {
    return situation.sensors().get(index).trust() == trust ? 1 : -1;
  }

  @Override
  public AlarmText text(Situation situation) {
    SensorTrust sensor = situation.sensors().get(index);
    String reason = sensor.reason().isEmpty() ? "No reason is known." : sentence(sensor.reason());
    if (trust == Trust.LOST) {
      return new AlarmText(
          "Sensor " + sensor.id() + " gives no readings",
          reason,
          "Look at its plug and power; until it is back nobody watches the floor.");
    }
    return new AlarmText(
        "Sensor " + sensor.id() + " is not to be believed",
        reason,
        "Check how it is mounted, and its zero; compare the floor with a level.");
  }

  /** Reasons come from drivers and the kernel, as parts of sentences or as whole ones. */
  private static String sentence(String reason) {
    String end = reason.endsWith(".") ? "" : ".";
    return Character.toUpperCase(reason.charAt(0)) + reason.substring(1) + end;
  }
}
