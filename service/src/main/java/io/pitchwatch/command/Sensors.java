package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.Installation;
import io.pitchwatch.visit.Report.SensorReport;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.LongFunction;

/**
 * The sensors of one coach together: which one is believed, whether they agree, and by how much the
 * frame is twisted between them.
 *
 * <p>The first is believed while it can be; when it fails, or is doubtful and another is good, the
 * next takes over with its own zero. The first comes back once it has been better for a minute.
 */
final class Sensors {

  private static final long RETURN_NANOS = 60_000_000_000L;

  /** A zero this far off by temperature is no zero any more for somebody who stays. */
  private static final double DRIFT_RAD = Math.toRadians(0.5);

  /** Frames twist about their length; they hardly bend. */
  private static final double BEND_RAD = Math.toRadians(0.5);

  private static final Instant EARLIEST = Instant.parse("2026-01-01T00:00:00Z");

  private final List<SensorPost> posts;
  private final Upkeep upkeep;
  private final LongFunction<Instant> wall;
  private int believed;
  private long worseNanos;

  Sensors(List<SensorPost> posts, Upkeep upkeep, LongFunction<Instant> wall) {
    this.posts = List.copyOf(posts);
    this.upkeep = upkeep;
    this.wall = wall;
  }

  /** Polls all; returns the time at which to call again. */
  long poll(long nowNanos) {
    long dueNanos = Long.MAX_VALUE;
    for (SensorPost post : posts) {
      dueNanos = Math.min(dueNanos, post.poll(nowNanos) - nowNanos);
    }
    return nowNanos + dueNanos;
  }

  /** One for each, in the order of the config. */
  List<SensorReport> reports(long nowNanos) {
    List<SensorReport> reports = new ArrayList<>(posts.size());
    for (SensorPost post : posts) {
      post.zeroAge(ageDays(post.setup().zero(), nowNanos));
      reports.add(post.report(nowNanos));
    }
    choose(reports, nowNanos);
    return reports;
  }

  private void choose(List<SensorReport> reports, long nowNanos) {
    int best = 0;
    for (int i = 1; i < reports.size(); i++) {
      if (reports.get(i).health().compareTo(reports.get(best).health()) < 0) {
        best = i;
      }
    }
    boolean worse = reports.get(believed).health() != reports.get(best).health();
    if (best == believed) {
      worseNanos = nowNanos;
    } else if (worse || nowNanos - worseNanos > RETURN_NANOS) {
      believed = best;
      worseNanos = nowNanos;
    }
  }

  /** The floor as the believed sensor reads it; valid after {@link #reports}. */
  FloorReading floor(long nowNanos) {
    return posts.get(believed).reading(nowNanos);
  }

  /** Looks after them. */
  Upkeep upkeep() {
    return upkeep;
  }

  /** The believed sensor. */
  SensorPost believed() {
    return posts.get(believed);
  }

  /** What is known of them as they are built in. */
  Installation installation(long nowNanos) {
    Lean difference = difference(nowNanos);
    return new Installation(
        upkeep.guide(),
        difference.rollRad(),
        ageDays(believed().setup().zero(), nowNanos),
        doubt(difference),
        believed);
  }

  /** By how much the second sensor's place leans otherwise than the first's. */
  private Lean difference(long nowNanos) {
    if (posts.size() < 2) {
      return new Lean(Double.NaN, Double.NaN);
    }
    FloorReading one = posts.get(0).reading(nowNanos);
    FloorReading other = posts.get(1).reading(nowNanos);
    boolean both = one.state() == FloorState.STEADY && other.state() == FloorState.STEADY;
    return both ? other.steady().minus(one.steady()) : new Lean(Double.NaN, Double.NaN);
  }

  private double ageDays(Zero zero, long nowNanos) {
    Instant now = wall.apply(nowNanos);
    // A board without a clock battery begins years ago.
    if (zero.date().isEmpty() || now.isBefore(EARLIEST)) {
      return Double.NaN;
    }
    try {
      return Duration.between(Instant.parse(zero.date()), now).toMinutes() / 1440.0;
    } catch (DateTimeException | ArithmeticException e) {
      return Double.NaN;
    }
  }

  private String doubt(Lean difference) {
    SensorPost post = believed();
    if (post.movedOnItsSeat()) {
      return "sensor "
          + post.id()
          + " seems to have been moved: what it says jumped while the coach stood";
    }
    if (Math.abs(difference.pitchRad()) > BEND_RAD) {
      return "sensors "
          + posts.get(0).id()
          + " and "
          + posts.get(1).id()
          + " differ front to back by "
          + CareWords.degrees(Math.abs(difference.pitchRad()))
          + "; one of them has moved or drifted";
    }
    double warmerC = post.drift().warmerC();
    double driftRad = post.drift().errorRad();
    return driftRad > DRIFT_RAD
        ? String.format(
            Locale.ROOT,
            "it is %.0f \u00B0C %s than when sensor %s was zeroed; its chip may have drifted by %s"
                + " over that",
            Math.abs(warmerC),
            warmerC > 0 ? "warmer" : "colder",
            post.id(),
            CareWords.degrees(driftRad))
        : "";
  }
}
