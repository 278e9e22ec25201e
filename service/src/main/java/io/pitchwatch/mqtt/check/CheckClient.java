package io.pitchwatch.mqtt.check;

import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Pending;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.link.Session;
import io.pitchwatch.mqtt.link.SessionEvents;
import io.pitchwatch.mqtt.link.SessionPlan;
import io.pitchwatch.mqtt.link.Standing;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** Asks a daemon, from anywhere, how the coach stands now. One question each. */
public final class CheckClient implements SessionEvents {

  private static final Duration KEEP_ALIVE = Duration.ofSeconds(30);
  private static final long REST_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

  /** Once we listen, a state that stands comes at once; so long we wait for one at most. */
  private static final long STATE_NANOS = TimeUnit.SECONDS.toNanos(3);

  private static final long CLOSING_MILLIS = 500;

  private final CheckPlan plan;
  private final Topic answerTopic;
  private final Payload correlation;
  private final Thread asker = Thread.currentThread();
  private volatile Optional<CheckOutcome> outcome = Optional.empty();
  private volatile String state = "";
  private Optional<Pending> listening = Optional.empty();
  private boolean asked;
  private long askedAtNanos;

  private CheckClient(CheckPlan plan) {
    this.plan = plan;
    String unique = UUID.randomUUID().toString();
    this.answerTopic = new Topic("pitchwatch/answer/" + unique);
    this.correlation = Payload.of(unique);
  }

  /** Asks and waits for what becomes of it, on the caller's thread, no longer than planned. */
  public static CheckOutcome ask(CheckPlan plan) {
    return new CheckClient(plan).ask();
  }

  private CheckOutcome ask() {
    long startNanos = System.nanoTime();
    SessionPlan sessionPlan =
        new SessionPlan(
            plan.broker(),
            "check-" + UUID.randomUUID(),
            plan.credentials(),
            plan.caFile(),
            Optional.empty(),
            KEEP_ALIVE,
            System::nanoTime);
    Session session = new Session(sessionPlan, this);
    try {
      return converse(session, startNanos);
    } finally {
      end(session);
    }
  }

  private static void end(Session session) {
    try {
      session.close(true).join(CLOSING_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private CheckOutcome converse(Session session, long startNanos) {
    long now = startNanos;
    while (now - startNanos < plan.patience().toNanos() && !Thread.interrupted()) {
      Optional<CheckOutcome> found = step(session, now);
      if (found.isPresent()) {
        return found.get();
      }
      LockSupport.parkNanos(this, REST_NANOS);
      now = System.nanoTime();
    }
    return tooLate(session.standing());
  }

  private Optional<CheckOutcome> step(Session session, long nowNanos) {
    Standing standing = session.standing();
    if (standing instanceof Standing.Ended ended) {
      return Optional.of(failure(ended));
    }
    if (standing instanceof Standing.Connected) {
      session.tick(nowNanos);
      if (listening.isEmpty()) {
        listening = Optional.of(session.subscribe(filters()));
      }
      if (!asked && listening.get().isDone()) {
        put(session, listening.get().denied(), nowNanos);
      }
      if (asked && state.isEmpty() && nowNanos - askedAtNanos > STATE_NANOS) {
        conclude(
            new CheckOutcome.DaemonAway(
                "nobody at " + plan.broker() + " speaks for " + plan.topics().device()));
      }
    }
    return outcome;
  }

  private void put(Session session, List<String> denied, long nowNanos) {
    if (!denied.isEmpty()) {
      conclude(
          new CheckOutcome.CredentialsRefused(
              "the broker does not let this user listen to " + String.join(", ", denied)));
      return;
    }
    asked = session.offer(question());
    askedAtNanos = nowNanos;
  }

  private List<Filter> filters() {
    return List.of(new Filter(answerTopic.text(), 1), new Filter(plan.topics().state().text(), 1));
  }

  private Publication question() {
    return Publication.request(plan.topics().check(), Payload.NOTHING, answerTopic, correlation);
  }

  private CheckOutcome tooLate(Standing standing) {
    String within = " within " + plan.patience().toSeconds() + " s";
    if (!(standing instanceof Standing.Connected)) {
      return new CheckOutcome.BrokerUnreachable(
          "the broker at " + plan.broker() + " does not answer" + within);
    }
    return new CheckOutcome.TimedOut(
        "the daemon of "
            + plan.topics().device()
            + " calls itself "
            + state
            + " and does not answer"
            + within);
  }

  private static CheckOutcome failure(Standing.Ended ended) {
    return ended instanceof Standing.Unwelcome
        ? new CheckOutcome.CredentialsRefused(ended.why())
        : new CheckOutcome.BrokerUnreachable(ended.why());
  }

  @Override
  public void arrived(Arrival arrival) {
    if (arrival.topic().equals(answerTopic.text())) {
      boolean ours = arrival.correlation().equals(Optional.of(correlation));
      arrival
          .payload()
          .text()
          .filter(text -> ours)
          .flatMap(AnswerReader::read)
          .ifPresent(this::conclude);
    } else {
      state = arrival.payload().text().orElse("");
      boolean away =
          state.equals(DeviceState.LOST.word()) || state.equals(DeviceState.DISCONNECTED.word());
      if (away) {
        conclude(
            new CheckOutcome.DaemonAway(
                "the daemon of " + plan.topics().device() + " is " + state));
      }
    }
    stirred();
  }

  @Override
  public void refused(String topic, String why) {
    conclude(new CheckOutcome.CredentialsRefused(topic + ": " + why));
  }

  @Override
  public void stirred() {
    LockSupport.unpark(asker);
  }

  private void conclude(CheckOutcome found) {
    if (outcome.isEmpty()) {
      outcome = Optional.of(found);
    }
  }
}
