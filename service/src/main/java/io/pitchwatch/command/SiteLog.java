package io.pitchwatch.command;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Headline;
import io.pitchwatch.store.SiteBook;
import io.pitchwatch.store.Written;
import io.pitchwatch.visit.LaidText;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.SiteReport;
import io.pitchwatch.visit.SiteVisit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the book of visits: one begins when the coach comes to rest, and ends when it drives. It
 * goes on over restarts. A stop that nobody named, where nothing was laid and the coach was not
 * parked, is not written down: a day in town would push years of sites out of the book. Only the
 * owner names a site; no position is ever kept.
 */
final class SiteLog {

  private static final Lean UNKNOWN = new Lean(Double.NaN, Double.NaN);

  /** Nothing in the book changes faster than people lay blocks. */
  private static final long LOOK_NANOS = 10_000_000_000L;

  /** Settlement is written when it has grown by so much, or the card would be worn out by it. */
  private static final double WORTH_WRITING_RAD = Math.toRadians(0.05);

  private final SiteBook book;
  private final LongFunction<Instant> wall;
  private final Consumer<SiteReport> tell;
  private @Nullable SiteVisit visit;
  private @Nullable Report last;
  private long lookedNanos;

  /** Pieces that lay there at the last look; -1 before the first. */
  private int pieces = -1;

  /**
   * A log that goes on where the book ends.
   *
   * @param tell takes what is known of the site, now and whenever it changes
   */
  SiteLog(SiteBook book, LongFunction<Instant> wall, Consumer<SiteReport> tell) {
    this.book = book;
    this.wall = wall;
    this.tell = tell;
    List<SiteVisit> visits = book.visits();
    SiteVisit last = visits.isEmpty() ? null : visits.get(visits.size() - 1);
    this.visit = last != null && last.endedWallSeconds() == 0 ? last : null;
    tell();
  }

  /** Takes a round's report. */
  void hear(Report report) {
    last = report;
    SiteVisit open = visit;
    if (report.phase() == Phase.UNDER_WAY) {
      if (open != null) {
        keep(with(open, report, wallSeconds(report), open.settled()));
        visit = null;
        tell();
      }
      return;
    }
    if (report.floor().state() != FloorState.STEADY || report.phase() == Phase.LEAVING) {
      return;
    }
    if (open == null) {
      keep(begun("", report));
    } else if (report.atNanos() - lookedNanos >= LOOK_NANOS) {
      lookedNanos = report.atNanos();
      keepUp(open, report);
    }
  }

  private SiteVisit begun(String name, Report report) {
    return new SiteVisit(
        book.nextNumber(),
        name,
        wallSeconds(report),
        0,
        report.stay(),
        report.surface(),
        report.floor().lean(),
        UNKNOWN,
        UNKNOWN,
        laid(report),
        planned(report).orElse(""));
  }

  private void keepUp(SiteVisit open, Report report) {
    Lean lean = report.floor().lean();
    SiteVisit now = taken(with(open, report, 0, settled(open, lean)), report);
    if (!open.found().isKnown()) {
      now = now.leaning(lean, now.levelled(), now.settled());
    }
    if (report.phase() == Phase.PARKED && !open.levelled().isKnown()) {
      now = now.leaning(now.found(), lean, Lean.LEVEL);
    }
    boolean grown =
        now.settled().isKnown()
            && (!open.settled().isKnown()
                || now.settled().minus(open.settled()).largestRad() >= WORTH_WRITING_RAD);
    SiteVisit likeBefore = grown ? now : with(now, report, 0, open.settled());
    if (!likeBefore.equals(open)) {
      keep(likeBefore);
    }
  }

  private static Lean settled(SiteVisit open, Lean now) {
    Lean since = open.levelled();
    return !since.isKnown() ? UNKNOWN : now.minus(since);
  }

  private static SiteVisit with(SiteVisit open, Report report, long ended, Lean settled) {
    return open.staying(ended, report.stay(), report.surface())
        .leaning(open.found(), open.levelled(), settled);
  }

  /**
   * The visit with what lies there and what is planned. Once the coach is parked both stand, unless
   * more is laid: who leaves collects what lies there, and a plan for another stay was not laid.
   */
  private SiteVisit taken(SiteVisit open, Report report) {
    boolean more = pieces >= 0 && report.laid().pieces() > pieces;
    pieces = report.laid().pieces();
    if (open.levelled().isKnown() && !more) {
      return open;
    }
    return open.on(laid(report), planned(report).orElse(open.plan()));
  }

  private static String laid(Report report) {
    return cut(LaidText.of(report.laid()));
  }

  private static Optional<String> planned(Report report) {
    return report.advice().planned().map(it -> cut(Headline.of(it.plan())));
  }

  private static String cut(String text) {
    return text.substring(0, Math.min(text.length(), SiteVisit.LONGEST_TEXT));
  }

  /**
   * The owner names the site, or takes its name away; the name counts until the coach drives on.
   *
   * @return what came of keeping it; empty while the coach is under way, or nothing is known of it
   */
  Optional<Written> name(String name) {
    Report report = last;
    if (report == null || report.phase() == Phase.UNDER_WAY) {
      return Optional.empty();
    }
    SiteVisit named = visit == null ? begun(name, report) : visit.named(name);
    visit = named;
    Written written = book.keep(named);
    tell();
    return Optional.of(written);
  }

  /** A sensor was zeroed or set up anew; what that changes is not taken for sinking. */
  void setUpAnew() {
    SiteVisit open = visit;
    if (open != null) {
      visit = open.leaning(open.found(), UNKNOWN, UNKNOWN);
    }
  }

  private void keep(SiteVisit now) {
    visit = now;
    if (!isPassing(now)) {
      book.keep(now);
    }
  }

  private static boolean isPassing(SiteVisit stop) {
    return stop.site().isEmpty() && stop.laid().isEmpty() && !stop.levelled().isKnown();
  }

  private void tell() {
    SiteVisit open = visit;
    if (open == null || open.site().isEmpty()) {
      tell.accept(SiteReport.UNNAMED);
      return;
    }
    List<SiteVisit> before = new ArrayList<>(book.visitsTo(open.site()));
    before.removeIf(each -> each.number() == open.number());
    Collections.reverse(before);
    tell.accept(new SiteReport(open.site(), before));
  }

  private long wallSeconds(Report report) {
    return wall.apply(report.atNanos()).getEpochSecond();
  }
}
