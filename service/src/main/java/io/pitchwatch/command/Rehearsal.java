package io.pitchwatch.command;

import io.pitchwatch.command.Timeline.Entry;
import io.pitchwatch.command.Timeline.Kind;
import io.pitchwatch.command.Timeline.Summary;
import io.pitchwatch.command.Timeline.Title;
import io.pitchwatch.config.Config;
import io.pitchwatch.mqtt.LinkClock;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/**
 * The whole service above a simulated coach, on virtual time: the lookout that runs live, its store
 * on the disk, and what the broker would hear. The same scenario gives the same timeline.
 */
final class Rehearsal implements AutoCloseable {

  private static final double NANOS_PER_SECOND = 1e9;

  /** The wall clock at a scenario's beginning: a label, the same every time. */
  private static final Instant BEGINNING = Instant.parse("2026-06-01T12:00:00Z");

  private final Config config;
  private final SimulatedCoach coach;
  private final SimulatedCoach.Script script;
  private final Timeline timeline;
  private final Summing summing = new Summing();
  private final Broadcast broadcast;
  private final LongConsumer progress;
  private final Underfoot underfoot = new Underfoot();
  private @Nullable Lookout lookout;
  private @Nullable Report last;
  private long nowNanos;
  private long jumpedNanos;
  private long brokerBackNanos;
  private boolean brokerAway;
  private boolean siteNamed;

  /**
   * A rehearsal that has not begun.
   *
   * @param config the coach; its store must be the rehearsal's own
   * @param coach at the scenario's beginning; closed with the rehearsal
   * @param timeline takes everything down
   * @param progress is told scenario time every minute of it
   */
  Rehearsal(Config config, SimulatedCoach coach, Timeline timeline, LongConsumer progress) {
    this.config = config;
    this.coach = coach;
    this.script = coach.script();
    this.timeline = timeline;
    this.progress = progress;
    this.broadcast = new Broadcast(config, timeline, summing, this::wall);
    this.siteNamed = script.site().isEmpty();
  }

  private Instant wall(long nanos) {
    return BEGINNING.plusNanos(nanos).plusNanos(jumpedNanos);
  }

  /** Plays it from beginning to end. */
  Summary play() {
    timeline.begin(
        new Title(
            script.name(),
            config.coach().id(),
            script.seed(),
            script.runNanos() / NANOS_PER_SECOND));
    Lookout watching = begin();
    long toldNanos = 0;
    while (nowNanos < script.runNanos()) {
      long dueNanos = watching.step(nowNanos);
      nameSite(watching);
      carryOut(watching);
      // Somebody who asks to be called at once is called a microsecond later, or time would stand.
      nowNanos = Math.min(Math.max(dueNanos, nowNanos + 1000), script.runNanos());
      coach.turnTo(nowNanos);
      watching = happen(watching);
      if (nowNanos - toldNanos >= 60 * NANOS_PER_SECOND) {
        toldNanos = nowNanos;
        progress.accept(nowNanos);
      }
    }
    if (last != null) {
      broadcast.farewell(last, nowNanos);
    }
    watching.close();
    lookout = null;
    Summary summary = summing.summary();
    timeline.end(summary);
    return summary;
  }

  /** The owner of a coach that is parked for the first time says where. */
  private void nameSite(Lookout watching) {
    if (!siteNamed && last != null && last.phase() == Phase.PARKED) {
      siteNamed = true;
      around("site", "its owner calls it " + script.site());
      watching.orders().site(script.site());
    }
  }

  private static void carryOut(Lookout watching) {
    try {
      watching.carryOut(0);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Lookout begin() {
    LinkClock clock = new LinkClock(() -> nowNanos, this::wall);
    Lookout begun =
        new Lookout(
            config,
            coach.buses(),
            new Lookout.Surroundings(
                clock, Runnable::run, Runnable::run, Runnable::run, audience()));
    lookout = begun;
    broadcast.begin(nowNanos);
    begun.troubles().forEach(it -> broadcast.say(LogLevel.WARN, it.text(), nowNanos));
    return begun;
  }

  private Audience audience() {
    return new Audience() {
      @Override
      public void hear(Report report) {
        last = report;
        broadcast.hear(report, nowNanos);
      }

      @Override
      public void say(LogLevel level, String text) {
        broadcast.say(level, text, nowNanos);
      }
    };
  }

  /** Brings about what is due around the service; a power cut makes a new one. */
  private Lookout happen(Lookout watching) {
    if (brokerAway && nowNanos >= brokerBackNanos) {
      brokerAway = false;
      around("broker-down", "over; everything is said anew");
      broadcast.come(nowNanos);
    }
    Lookout now = watching;
    for (SimulatedCoach.Due due : coach.due()) {
      switch (due.does()) {
        case "power-cut" -> now = cut(now, due.number("lasts"));
        case "broker-down" -> brokerDown(due.number("lasts"));
        case "clock-jump" -> {
          jumpedNanos += nanos(due.number("by"));
          around(due.does(), "the wall clock jumps by " + words(due.number("by")));
        }
        case "lay" -> {
          around(due.does(), underfoot.words(due));
          underfoot.lay(due).ifPresent(now.orders()::laid);
        }
        case "jack" -> around(due.does(), Underfoot.jacked(due));
        default -> around(due.does(), "not part of this rehearsal");
      }
    }
    return now;
  }

  private Lookout cut(Lookout watching, double seconds) {
    around("power-cut", "for " + words(seconds) + "; what was not written is lost");
    broadcast.lost(nowNanos);
    watching.abandon();
    nowNanos = Math.min(nowNanos + nanos(seconds), script.runNanos());
    coach.turnTo(nowNanos);
    around("power-cut", "over; the service begins anew");
    summing.restarted();
    return begin();
  }

  private void brokerDown(double seconds) {
    around("broker-down", "for " + words(seconds) + "; nobody hears what changes");
    brokerAway = true;
    brokerBackNanos = nowNanos + nanos(seconds);
    broadcast.leave();
  }

  private void around(String does, String text) {
    timeline.add(new Entry(nowNanos, Kind.AROUND, does, Optional.of(text), ""));
  }

  private static long nanos(double seconds) {
    return Math.round(seconds * NANOS_PER_SECOND);
  }

  private static String words(double seconds) {
    Duration lasts = Duration.ofSeconds(Math.round(Math.abs(seconds)));
    String sign = seconds < 0 ? "-" : "";
    if (lasts.toDays() >= 2) {
      return sign + lasts.toDays() + " days";
    }
    if (lasts.toHours() >= 2) {
      return sign + lasts.toHours() + " h " + lasts.toMinutesPart() + " min";
    }
    return lasts.toMinutes() >= 2
        ? sign + lasts.toMinutes() + " min " + lasts.toSecondsPart() + " s"
        : sign + lasts.toSeconds() + " s";
  }

  @Override
  public void close() {
    Lookout running = lookout;
    if (running != null) {
      running.abandon();
    }
    coach.close();
  }
}
