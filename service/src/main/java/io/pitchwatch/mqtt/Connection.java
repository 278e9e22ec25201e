package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.homie.DeviceState;
import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Filter;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.link.Session;
import io.pitchwatch.mqtt.link.SessionEvents;
import io.pitchwatch.mqtt.link.SessionPlan;
import io.pitchwatch.mqtt.link.Standing;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;

/** Keeps one connection to the broker, by making a new one whenever the last one ended. */
final class Connection implements SessionEvents {

  private static final int MOST_STRAYS = 8;
  private static final int MOST_REFUSALS = 16;
  private static final long CLOSING_MILLIS = TimeUnit.SECONDS.toMillis(2);

  private final LinkParts parts;
  private final DeviceTopics topics;
  private final Mail mail;
  private final Runnable wake;
  private final SessionPlan plan;
  private final Dialling dialling;
  private final ConcurrentLinkedQueue<String> refusals = new ConcurrentLinkedQueue<>();
  private Optional<Session> session = Optional.empty();
  private Optional<Greeting> greeting = Optional.empty();
  private volatile Leftovers leftovers;
  private long connections;
  private String lastWhy = "";
  private boolean wornOut;

  Connection(LinkParts parts, DeviceTopics topics, Mail mail, Runnable wake) {
    this.parts = parts;
    this.topics = topics;
    this.mail = mail;
    this.wake = wake;
    MqttSettings settings = parts.settings();
    this.plan =
        new SessionPlan(
            settings.broker(),
            CoachLink.CLIENT_ID_PREFIX + topics.device(),
            settings.credentials(),
            settings.caFile(),
            Optional.of(Publication.standing(topics.state(), Payload.of(DeviceState.LOST.word()))),
            settings.keepAlive(),
            parts.clock().nanos());
    this.dialling =
        new Dialling(settings.seed(), plan.contested(), parts.clock().nanos().getAsLong());
    this.leftovers = new Leftovers(topics, Payload.NOTHING);
    this.leftovers.giveUp();
  }

  /** One round: connect, greet, send; whatever is due. */
  void keep(Voice voice, List<Filter> wanted, long nowNanos) {
    if (session.isEmpty()) {
      if (dialling.isDue(nowNanos)) {
        session = Optional.of(new Session(plan, this));
      }
      return;
    }
    Standing standing = session.get().standing();
    if (standing instanceof Standing.Ended ended) {
      end(ended, nowNanos);
    } else if (standing instanceof Standing.Connected) {
      serve(session.get(), voice, wanted, nowNanos);
    }
  }

  private void serve(Session current, Voice voice, List<Filter> wanted, long nowNanos) {
    if (greeting.isEmpty()) {
      greeting = Optional.of(greet(current, nowNanos));
    }
    Greeting hello = greeting.get();
    boolean wasDone = hello.isDone();
    if (leftovers.isComplete() && !wasDone && !leftovers.hasWill()) {
      dialling.brokerWasAway();
    }
    hello.advance(voice, wanted, mail.log(), nowNanos);
    current.tick(nowNanos);
    mail.outbox().pump(current::offer);
    if (!wasDone && hello.isDone()) {
      lastWhy = "";
      LinkLog.local(LogLevel.INFO, "all stands on the broker at " + plan.broker());
      parts.watch().ready();
    }
    String refusal = refusals.poll();
    if (refusal != null) {
      mail.log().complain(refusal, nowNanos);
    }
  }

  private Greeting greet(Session current, long nowNanos) {
    dialling.connected(nowNanos);
    connections++;
    Payload mark =
        Payload.of("connection " + connections + " of " + plan.clientId() + ", " + nowNanos);
    leftovers = new Leftovers(topics, mark);
    Greeting hello = new Greeting(current, mail.outbox(), topics, leftovers, mark);
    hello.begin(nowNanos);
    return hello;
  }

  private void end(Standing.Ended how, long nowNanos) {
    session.ifPresent(s -> s.close(false));
    session = Optional.empty();
    greeting = Optional.empty();
    leftovers.giveUp();
    Standing.Ended ended = dialling.ended(how, nowNanos);
    if (!ended.why().equals(lastWhy)) {
      lastWhy = ended.why();
      LinkLog.local(LogLevel.WARN, ended.why());
      parts.watch().away(ended.why());
      if (ended instanceof Standing.TakenOver) {
        // Said to those on the broker too, as soon as we are back there.
        mail.log().say(LogLevel.ERROR, ended.why());
      }
    }
    int strays = StrayThreads.count(plan.clientId());
    if (strays >= MOST_STRAYS && !wornOut) {
      wornOut = true;
      parts.watch().wornOut(strays + " threads of failed connections cannot be stopped");
    }
  }

  /** Whether nothing is left to send, or there is nobody to send it to. */
  boolean isIdle(long nowNanos) {
    if (session.isEmpty() || !(session.get().standing() instanceof Standing.Connected)) {
      return true;
    }
    Session current = session.get();
    current.tick(nowNanos);
    mail.outbox().pump(current::offer);
    return mail.outbox().isEmpty() && current.underWay() == 0;
  }

  /** Takes leave of the broker, if there is one. */
  void close() {
    if (session.isEmpty()) {
      return;
    }
    try {
      session.get().close(true).join(CLOSING_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    session = Optional.empty();
  }

  @Override
  public void arrived(Arrival arrival) {
    if (!leftovers.take(arrival)) {
      mail.inbox().put(arrival);
    }
    wake.run();
  }

  @Override
  public void refused(String topic, String why) {
    if (refusals.size() < MOST_REFUSALS) {
      refusals.add(topic + ": " + why);
    }
  }

  @Override
  public void stirred() {
    wake.run();
  }
}
