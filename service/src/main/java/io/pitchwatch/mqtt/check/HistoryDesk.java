package io.pitchwatch.mqtt.check;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.mqtt.tree.MalformedException;
import io.pitchwatch.mqtt.tree.Ruling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Takes requests for the history, has them looked up, and sends each answer where it is wanted: to
 * the response topic of MQTT 5, or, for clients that have none, below our own topics under a token
 * of theirs.
 */
public final class HistoryDesk {

  /** So many may be looked up at a time. */
  static final int MOST_WAITING = 4;

  /** A request that was lost on the way does not keep others out for ever. */
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);

  private static final int LONGEST_REQUEST = 1024;
  private static final int LONGEST_CORRELATION = 1024;

  private final DeviceTopics topics;
  private final AnswerTopics answerTopics;
  private final Commands commands;
  private final Runnable wake;
  private final ConcurrentLinkedQueue<Publication> answers = new ConcurrentLinkedQueue<>();
  private final Queue<Long> waiting = new ConcurrentLinkedQueue<>();

  /**
   * A desk without requests.
   *
   * @param topics the device's own, which no response topic may name
   * @param hubPrefixes where hubs listen, which no response topic may name either
   * @param commands looks things up
   * @param wake is called whenever an answer is there, from any thread
   */
  public HistoryDesk(
      DeviceTopics topics, List<String> hubPrefixes, Commands commands, Runnable wake) {
    this.topics = topics;
    this.answerTopics = AnswerTopics.outside(topics, hubPrefixes);
    this.commands = commands;
    this.wake = wake;
  }

  /** Takes a request; it says where it wants its answer. */
  public Ruling take(Arrival arrival) {
    waiting.removeIf(sinceNanos -> arrival.atNanos() - sinceNanos > PATIENCE_NANOS);
    if (waiting.size() >= MOST_WAITING) {
      return new Ruling.Refused(MOST_WAITING + " requests are being looked up already");
    }
    if (arrival.length() > LONGEST_REQUEST
        || arrival.correlation().map(Payload::length).orElse(0) > LONGEST_CORRELATION) {
      return new Ruling.Refused(
          "request or correlation data is longer than " + LONGEST_REQUEST + " bytes");
    }
    try {
      HistoryRequest request = HistoryRequest.parse(arrival.payload().text().orElse("?"));
      List<Topic> answerTo = new ArrayList<>();
      request.reply().ifPresent(token -> answerTo.add(topics.historyAnswer(token)));
      if (arrival.responseTopic().isPresent()) {
        Optional<Topic> wanted = answerTopics.permitted(arrival.responseTopic().get());
        if (wanted.isEmpty()) {
          return new Ruling.Refused(answerTopics.allowed());
        }
        answerTo.add(wanted.get());
      }
      return answerTo.isEmpty()
          ? new Ruling.Refused("it needs a response topic (MQTT 5), or a reply in its JSON")
          : lookUp(request, answerTo, arrival);
    } catch (MalformedException e) {
      return new Ruling.Refused(String.valueOf(e.getMessage()));
    }
  }

  private Ruling lookUp(HistoryRequest request, List<Topic> answerTo, Arrival arrival) {
    Long since = arrival.atNanos();
    waiting.add(since);
    commands.history(
        request,
        document -> {
          waiting.remove(since);
          Payload payload = Payload.of(document);
          for (Topic topic : answerTo) {
            answers.add(Publication.answer(topic, payload, arrival.correlation()));
          }
          wake.run();
        });
    return new Ruling.Accepted();
  }

  /** Hands over what was looked up. */
  public void answer(Consumer<Publication> out) {
    Publication next = answers.poll();
    while (next != null) {
      out.accept(next);
      next = answers.poll();
    }
  }
}
