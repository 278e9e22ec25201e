package io.pitchwatch.mqtt.check;

import io.pitchwatch.mqtt.homie.DeviceTopics;
import io.pitchwatch.mqtt.homie.Topic;
import io.pitchwatch.mqtt.link.Arrival;
import io.pitchwatch.mqtt.link.Payload;
import io.pitchwatch.mqtt.link.Publication;
import io.pitchwatch.mqtt.tree.DeviceTree;
import io.pitchwatch.mqtt.tree.Freshness;
import io.pitchwatch.mqtt.tree.Ruling;
import io.pitchwatch.visit.Report;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.LongFunction;

/** Takes the questions of the remote check and answers each once something newer was read. */
public final class CheckDesk {

  /** So many questions may wait; there is one coach and a handful of people. */
  private static final int MOST_WAITING = 8;

  /**
   * So long a question waits for a newer sample; then it is told what is known, which is little.
   */
  static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(2);

  private static final int LONGEST_CORRELATION = 1024;

  private final DeviceTree tree;
  private final AnswerTopics answerTopics;
  private final LongFunction<Instant> wall;
  private final ArrayDeque<Question> waiting = new ArrayDeque<>();

  /**
   * A desk without questions.
   *
   * @param tree what there is to tell
   * @param topics the device's own, which no answer may be sent to
   * @param hubPrefixes where hubs listen, which no answer may be sent to either
   * @param wall wall time of a monotonic instant
   */
  public CheckDesk(
      DeviceTree tree, DeviceTopics topics, List<String> hubPrefixes, LongFunction<Instant> wall) {
    this.tree = tree;
    this.answerTopics = AnswerTopics.outside(topics, hubPrefixes);
    this.wall = wall;
  }

  /** Takes a question; it says where it wants its answer. */
  public Ruling take(Arrival arrival) {
    if (arrival.responseTopic().isEmpty()) {
      return new Ruling.Refused("a check needs a response topic (MQTT 5), and has none");
    }
    if (waiting.size() == MOST_WAITING) {
      return new Ruling.Refused(MOST_WAITING + " checks wait already");
    }
    Optional<Topic> answerTo = answerTopics.permitted(arrival.responseTopic().get());
    if (answerTo.isEmpty()) {
      return new Ruling.Refused(answerTopics.allowed());
    }
    if (arrival.correlation().map(Payload::length).orElse(0) > LONGEST_CORRELATION) {
      return new Ruling.Refused(
          "correlation data is longer than " + LONGEST_CORRELATION + " bytes");
    }
    waiting.add(new Question(answerTo.get(), arrival.correlation(), arrival.atNanos()));
    return new Ruling.Accepted();
  }

  /**
   * Answers every question for which a newer sample is at hand, or which has waited long enough.
   *
   * @param report the latest
   * @param out takes the answers
   */
  public void answer(Report report, long nowNanos, Consumer<Publication> out) {
    while (!waiting.isEmpty()) {
      Question first = waiting.element();
      Report known = Freshness.of(report, nowNanos);
      CheckDocument document = new CheckDocument(tree, known, wall, first.atNanos(), nowNanos);
      if (!document.isFresh() && nowNanos - first.atNanos() < PATIENCE_NANOS) {
        return;
      }
      out.accept(
          Publication.answer(first.answerTo(), Payload.of(document.json()), first.correlation()));
      waiting.remove();
    }
  }

  private record Question(Topic answerTo, Optional<Payload> correlation, long atNanos) {}
}
