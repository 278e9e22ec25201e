package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Outbox;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Pending;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.link.Session;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What is done on every new connection: say init; hear what stood on the broker; ask for commands;
 * say everything; say ready. No step waits for ever: a broker that does not let us listen still
 * gets our values.
 */
final class Greeting {

  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(3);

  private enum Step {
    ASKING,
    HEARING,
    LEAVING_OFF,
    SUBSCRIBING,
    TELLING,
    DONE
  }

  private final Session session;
  private final Outbox outbox;
  private final DeviceTopics topics;
  private final Leftovers leftovers;
  private final Payload mark;
  private Step step = Step.ASKING;
  private Pending pending;
  private long deadlineNanos;

  /**
   * Begins.
   *
   * @param leftovers hears what stood; its mark must be one of a kind
   * @param mark see there
   */
  Greeting(Session session, Outbox outbox, DeviceTopics topics, Leftovers leftovers, Payload mark) {
    this.session = session;
    this.outbox = outbox;
    this.topics = topics;
    this.leftovers = leftovers;
    this.mark = mark;
    this.pending = session.subscribe(List.of(new Filter(topics.everything(), 0)));
  }

  /** Starts the clock of the first step; to be called once. */
  void begin(long nowNanos) {
    deadlineNanos = nowNanos + PATIENCE_NANOS;
    outbox.clearStanding();
  }

  boolean isDone() {
    return step == Step.DONE;
  }

  /** Does what can be done now. */
  void advance(Voice voice, List<Filter> wanted, LinkLog log, long nowNanos) {
    boolean late = nowNanos - deadlineNanos > 0;
    switch (step) {
      case ASKING -> {
        if (pending.isDone() || late) {
          outbox.putLast(state(DeviceState.INIT));
          outbox.put(Publication.event(topics.log(LogLevel.DEBUG), mark));
          enter(Step.HEARING, nowNanos);
        }
      }
      case HEARING -> {
        if (leftovers.isComplete() || late) {
          leftovers.giveUp();
          pending = session.unsubscribe(topics.everything());
          enter(Step.LEAVING_OFF, nowNanos);
        }
      }
      case LEAVING_OFF -> {
        if (pending.isDone() || late) {
          pending = session.subscribe(wanted);
          enter(Step.SUBSCRIBING, nowNanos);
        }
      }
      case SUBSCRIBING -> {
        if (pending.isDone() || late) {
          tell(voice, log);
          enter(Step.TELLING, nowNanos);
        }
      }
      case TELLING -> {
        if (outbox.isEmpty() && session.underWay() == 0) {
          enter(Step.DONE, nowNanos);
        }
      }
      case DONE -> {}
    }
  }

  private void enter(Step next, long nowNanos) {
    step = next;
    deadlineNanos = nowNanos + PATIENCE_NANOS;
  }

  private void tell(Voice voice, LinkLog log) {
    List<String> denied = pending.isDone() ? pending.denied() : List.of();
    if (!denied.isEmpty()) {
      log.say(
          LogLevel.WARN,
          "the broker does not let us listen to "
              + String.join(", ", denied)
              + "; check its rights");
    }
    outbox.clearStanding();
    voice.everything(leftovers).forEach(outbox::put);
    outbox.putLast(state(DeviceState.READY));
  }

  private Publication state(DeviceState state) {
    return Publication.standing(topics.state(), Payload.of(state.word()));
  }
}
