package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Words;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What somebody wants to see of the history.
 *
 * @param step how finely; empty: as finely as there is room for
 * @param hours how far back from now, unless {@code from} says
 * @param from the first instant wanted, by the labels of the wall clock
 * @param to the first instant not wanted any more; empty: up to now
 * @param reply by what the one who asks will know the answer where the protocol has no better way
 */
public record HistoryRequest(
    Optional<Step> step,
    double hours,
    Optional<Instant> from,
    Optional<Instant> to,
    Optional<String> reply) {

  /** How finely. */
  public enum Step {
    MINUTE,
    HOUR,
    DAY
  }

  private static final double DEFAULT_HOURS = 24;
  private static final double MOST_HOURS = 20 * 366 * 24;
  private static final Pattern TOKEN = Pattern.compile("[a-z0-9-]{1,32}");

  /** The last day. */
  public static final HistoryRequest LAST_DAY =
      new HistoryRequest(
          Optional.empty(), DEFAULT_HOURS, Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Reads a request (docs/schemas/history-request.json); no bytes at all ask for the last day.
   *
   * @throws MalformedException if it is none
   */
  public static HistoryRequest parse(String payload) throws MalformedException {
    if (payload.isBlank()) {
      return LAST_DAY;
    }
    Fields fields = new Fields("history", StrictJson.object(payload));
    fields.only(Set.of("step", "hours", "from", "to", "reply"));
    if (fields.has("hours") && fields.has("from")) {
      throw new MalformedException("history has both hours and from; allowed is one of them");
    }
    return new HistoryRequest(
        step(fields),
        fields.has("hours") ? fields.number("hours", 0.1, MOST_HOURS) : DEFAULT_HOURS,
        instant(fields, "from"),
        instant(fields, "to"),
        reply(fields));
  }

  private static Optional<Step> step(Fields fields) throws MalformedException {
    if (!fields.has("step")) {
      return Optional.empty();
    }
    Optional<Step> step = Words.find(Step.values(), fields.text("step"));
    if (step.isEmpty()) {
      throw fields.missing("step", "minute, hour or day");
    }
    return step;
  }

  private static Optional<Instant> instant(Fields fields, String name) throws MalformedException {
    if (!fields.has(name)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Instant.parse(fields.text(name)));
    } catch (DateTimeException e) {
      throw fields.missing(name, "an instant such as 2026-06-01T12:00:00Z");
    }
  }

  private static Optional<String> reply(Fields fields) throws MalformedException {
    if (!fields.has("reply")) {
      return Optional.empty();
    }
    String token = fields.text("reply");
    if (!TOKEN.matcher(token).matches()) {
      throw fields.missing("reply", "1 to 32 of a-z, 0-9 and -");
    }
    return Optional.of(token);
  }
}
