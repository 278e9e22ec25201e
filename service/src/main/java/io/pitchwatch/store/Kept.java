package io.pitchwatch.store;

import io.pitchwatch.alarms.AlarmMemory;
import io.pitchwatch.attitude.Alignment;
import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.TemperatureDrift;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.visit.VisitState;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What must not be lost once it was said to be kept: every write waits for the disk. Not
 * thread-safe.
 */
public final class Kept {

  /** Longest text that can be kept, characters. */
  public static final int LONGEST = 65_536;

  private static final String ZERO = "zero";
  private static final String ALIGNMENT = "alignment";
  private static final String CALIBRATION = "calibration";
  private static final String BEFORE = "-before";
  private static final String DRIFT = "drift";
  private static final String REVERSAL = "reversal-first";
  private static final String ALARM = "alarm";
  private static final String VISIT = "visit";
  private static final String NOW = "now";

  private final KeptFile file;

  Kept(KeptFile file) {
    this.file = file;
  }

  /** All that was found out about a sensor. */
  public SensorSetup setup(String sensor) {
    return setup(sensor, "");
  }

  /** What was known of a sensor before its last change, to go back to. */
  public SensorSetup setupBefore(String sensor) {
    return setup(sensor, BEFORE);
  }

  private SensorSetup setup(String sensor, String when) {
    return new SensorSetup(
        read(CALIBRATION + when, sensor, SetupText::calibration).orElse(Calibration.NONE),
        read(ZERO + when, sensor, KeptText::zero).orElse(Zero.NONE),
        read(ALIGNMENT + when, sensor, KeptText::alignment).orElse(Alignment.Found.NONE));
  }

  /** Keeps all that was found out about a sensor, and what was known before, in one write. */
  public Written keepSetup(String sensor, SensorSetup setup) {
    SensorSetup before = setup(sensor);
    if (!before.equals(setup)) {
      set(sensor, BEFORE, before);
    }
    set(sensor, "", setup);
    return flush();
  }

  private void set(String sensor, String when, SensorSetup setup) {
    file.set(CALIBRATION + when, sensor, SetupText.of(setup.calibration()));
    file.set(ZERO + when, sensor, KeptText.of(setup.zero()));
    file.set(ALIGNMENT + when, sensor, KeptText.of(setup.alignment()));
  }

  /** The zero of a sensor. */
  public Optional<Zero> zero(String sensor) {
    return read(ZERO, sensor, KeptText::zero);
  }

  /** Keeps the zero of a sensor, and what was known before. */
  public Written keepZero(String sensor, Zero zero) {
    return keepSetup(sensor, setup(sensor).with(zero));
  }

  /**
   * What was learnt of a sensor's drift with temperature, along its chip's axes.
   *
   * @param chip the chip that is fitted now; what was learnt of another does not hold for it
   */
  public Optional<TemperatureDrift> drift(String sensor, String chip) {
    return read(DRIFT, sensor, SetupText::drift)
        .filter(of -> of.chip().equals(chip))
        .map(SetupText.ChipDrift::drift);
  }

  /** When what was learnt of a sensor's drift was kept, RFC 3339; empty where nobody knows. */
  public String driftDate(String sensor) {
    return read(DRIFT, sensor, SetupText::drift).map(SetupText.ChipDrift::date).orElse("");
  }

  /**
   * Keeps what was learnt of a sensor's drift with temperature, along its chip's axes.
   *
   * @param date a label for people, an RFC 3339 instant
   */
  public Written keepDrift(String sensor, String chip, TemperatureDrift drift, String date) {
    return file.put(DRIFT, sensor, SetupText.of(new SetupText.ChipDrift(chip, drift, date)));
  }

  /** Forgets what was learnt of a sensor's drift with temperature. */
  public Written forgetDrift(String sensor) {
    return file.remove(DRIFT, sensor);
  }

  /** The first reading of a reversal that waits for its second. */
  public Optional<Zero> reversalFirst(String sensor) {
    return read(REVERSAL, sensor, KeptText::zero);
  }

  /** Keeps the first reading of a reversal; the coach may be off while it is turned round. */
  public Written keepReversalFirst(String sensor, Zero first) {
    return file.put(REVERSAL, sensor, KeptText.of(first));
  }

  /** Forgets the first reading of a reversal. */
  public Written forgetReversal(String sensor) {
    return file.remove(REVERSAL, sensor);
  }

  /**
   * Where the visit stands: its phase, stay, surface and what is laid.
   *
   * @param nowNanos monotonic time, from which its phase is counted anew
   */
  public Optional<VisitState> visit(long nowNanos) {
    return read(VISIT, NOW, json -> KeptText.visit(json, nowNanos));
  }

  /** Keeps where the visit stands; costs nothing while nothing of it has changed. */
  public Written keepVisit(VisitState state) {
    return file.put(VISIT, NOW, KeptText.of(state));
  }

  /** The alarms by their ids, as they were when they were last kept. */
  public Map<String, AlarmMemory> alarms() {
    Map<String, AlarmMemory> alarms = new TreeMap<>();
    for (String id : file.all(ALARM).keySet()) {
      read(ALARM, id, KeptText::alarm).ifPresent(alarm -> alarms.put(id, alarm));
    }
    return alarms;
  }

  /**
   * Keeps alarms by their ids, all in one write. Their ages and what is left of their times go on
   * by themselves, so keep them when an alarm changes its state or somebody acknowledges or shelves
   * it, not every minute.
   */
  public Written keepAlarms(Map<String, AlarmMemory> alarms) {
    alarms.forEach((id, alarm) -> file.set(ALARM, id, KeptText.of(alarm)));
    return flush();
  }

  /** The text that is kept under a topic and a name. */
  public Optional<String> text(String topic, String name) {
    return file.get(topic, name);
  }

  /** All texts of a topic by name. */
  public NavigableMap<String, String> texts(String topic) {
    return file.all(topic);
  }

  /**
   * Keeps a text.
   *
   * @throws IllegalArgumentException if it is longer than {@link #LONGEST}
   */
  public Written keepText(String topic, String name, String text) {
    if (text.length() > LONGEST) {
      throw new IllegalArgumentException(
          "text has " + text.length() + " characters; at most " + LONGEST);
    }
    return file.put(topic, name, text);
  }

  /** Forgets a text. */
  public Written forgetText(String topic, String name) {
    return file.remove(topic, name);
  }

  /** Tries again to write what could not be written. */
  public Written flush() {
    return file.hasUnwritten() ? file.write() : new Written.Done();
  }

  /** A text of another version may not be what it was; then there is none. */
  private <T> Optional<T> read(String topic, String name, Function<JsonValue, T> reading) {
    return file.get(topic, name).flatMap(text -> decoded(text, reading));
  }

  static <T> Optional<T> decoded(String text, Function<JsonValue, T> reading) {
    try {
      return Optional.of(reading.apply(JsonValue.parse(text)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
