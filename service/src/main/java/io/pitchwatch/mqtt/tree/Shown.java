package io.pitchwatch.mqtt.tree;

import io.pitchwatch.mqtt.homie.Datatype;
import io.pitchwatch.mqtt.homie.Property;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** What one property shows, and when it may show something else. */
final class Shown {

  /** No value changes faster than 2 Hz. */
  static final long LEAST_GAP_NANOS = TimeUnit.MILLISECONDS.toNanos(500);

  /** The time of the figures changes with every sample; while parked once a minute says enough. */
  static final long PARKED_TIME_GAP_NANOS = TimeUnit.MINUTES.toNanos(1);

  /** The same while someone watches every step. */
  static final long LIVE_TIME_GAP_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** Nobody acts on how noisy a sensor is within a minute. */
  static final long LEISURE_NANOS = TimeUnit.MINUTES.toNanos(1);

  /** How long an accepted command stands against reports that do not know of it yet. */
  static final long HOLD_NANOS = TimeUnit.SECONDS.toNanos(3);

  /**
   * A digit changes only when the value is nearer to another one by half as much again as rounding
   * asks for, so that noise on the edge between two digits does not show.
   */
  private static final double STICKINESS = 0.75;

  private final Topic topic;
  private final Property property;
  private final double step;
  private Optional<String> text = Optional.empty();
  private double amount = Double.NaN;
  private boolean saidOnce;
  private long saidAtNanos;
  private boolean held;
  private long heldUntilNanos;

  Shown(Topic topic, Property property) {
    this.topic = topic;
    this.property = property;
    this.step = Math.pow(10, -property.decimals());
  }

  /**
   * Shows the value if it differs and its time has come.
   *
   * @param pace how closely it is watched
   * @return what to publish, if anything
   */
  Optional<Publication> show(Value value, Pace pace, long nowNanos) {
    held = held && nowNanos - heldUntilNanos < 0;
    if (held || isShown(value) || !isDue(value, pace, nowNanos)) {
      return Optional.empty();
    }
    set(value);
    saidOnce = true;
    saidAtNanos = nowNanos;
    return Optional.of(publication());
  }

  /** Shows an accepted command byte for byte, and holds it until reports agree. */
  Publication echo(String payload, long nowNanos) {
    set(Value.of(payload));
    saidOnce = true;
    saidAtNanos = nowNanos;
    held = true;
    heldUntilNanos = nowNanos + HOLD_NANOS;
    return publication();
  }

  /** What stands now. */
  Publication publication() {
    return text.map(t -> Publication.standing(topic, Payload.of(t)))
        .orElseGet(() -> Publication.removal(topic));
  }

  private boolean isShown(Value value) {
    if (!saidOnce) {
      return false;
    }
    if (value instanceof Value.Amount given) {
      return Math.abs(given.number() - amount) <= STICKINESS * step;
    }
    return value instanceof Value.Text given
        ? text.isPresent() && text.get().equals(given.text())
        : text.isEmpty();
  }

  private boolean isDue(Value value, Pace pace, long nowNanos) {
    if (!saidOnce || pace == Pace.AT_ONCE || value instanceof Value.Unknown) {
      return true;
    }
    long gapNanos = LEAST_GAP_NANOS;
    if (property.datatype() == Datatype.DATETIME && text.isPresent()) {
      gapNanos = pace == Pace.LIVE ? LIVE_TIME_GAP_NANOS : PARKED_TIME_GAP_NANOS;
    }
    if (property.leisurely() && text.isPresent()) {
      gapNanos = LEISURE_NANOS;
    }
    return nowNanos - saidAtNanos >= gapNanos;
  }

  private void set(Value value) {
    amount = Double.NaN;
    text = Optional.empty();
    if (value instanceof Value.Text given) {
      text = Optional.of(given.text());
    } else if (value instanceof Value.Amount given) {
      BigDecimal rounded = Decimals.rounded(given.number(), property.decimals());
      amount = rounded.doubleValue();
      text = Optional.of(rounded.toPlainString());
    }
  }
}
