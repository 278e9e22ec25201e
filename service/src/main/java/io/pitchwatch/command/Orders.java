package io.pitchwatch.command;

import io.pitchwatch.alarms.AlarmOutcome;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.mqtt.tree.Commands;
import io.pitchwatch.mqtt.tree.HistoryRequest;
import io.pitchwatch.store.Kept;
import io.pitchwatch.store.Written;
import io.pitchwatch.visit.Care;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Spots;
import io.pitchwatch.visit.VisitEvent;
import io.pitchwatch.visit.Watchkeeper;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** Carries out what people ask for, on the thread of the rounds. */
final class Orders implements Commands {

  private static final double NANOS_PER_MINUTE = 60e9;

  private final Inbox inbox;
  private final Watchkeeper keeper;
  private final Sensors sensors;
  private final Upkeep upkeep;
  private final Kept kept;
  private final Historian historian;
  private final SiteLog sites;
  private final Spots spots = new Spots();
  private final LongSupplier clock;
  private final LongFunction<String> date;
  private final BiConsumer<LogLevel, String> answer;

  Orders(
      Inbox inbox,
      Watch watch,
      LongSupplier clock,
      LongFunction<String> date,
      BiConsumer<LogLevel, String> answer) {
    this.inbox = inbox;
    this.keeper = watch.keeper();
    this.sensors = watch.sensors();
    this.upkeep = watch.sensors().upkeep();
    this.kept = watch.kept();
    this.historian = watch.historian();
    this.sites = watch.sites();
    this.clock = clock;
    this.date = date;
    this.answer = answer;
  }

  @Override
  public void stay(Stay stay) {
    visit(new VisitEvent.StaySet(stay));
  }

  @Override
  public void surface(Surface surface) {
    visit(new VisitEvent.SurfaceSet(surface));
  }

  @Override
  public void laid(Laid laid) {
    visit(new VisitEvent.LaidSet(laid));
  }

  private void visit(VisitEvent event) {
    inbox.leave(
        () -> {
          keeper.on(event, clock.getAsLong());
          lasting(kept.keepVisit(keeper.state()));
        });
  }

  @Override
  public void site(String name) {
    inbox.leave(
        () -> {
          Optional<Written> written = sites.name(name);
          written.ifPresent(this::lasting);
          if (written.isEmpty()) {
            answer.accept(LogLevel.WARN, "site not named: the coach does not stand anywhere yet");
          }
        });
  }

  @Override
  public void zero() {
    inbox.leave(
        () -> {
          long nowNanos = clock.getAsLong();
          carryOut("zero", () -> upkeep.zero(nowNanos, date.apply(nowNanos)));
        });
  }

  @Override
  public void care(Care step, Optional<String> sensor) {
    inbox.leave(
        () -> {
          long nowNanos = clock.getAsLong();
          String when = date.apply(nowNanos);
          String what = step.name().toLowerCase(Locale.ROOT).replace('_', ' ');
          carryOut(what, () -> carry(step, sensor, nowNanos, when));
        });
  }

  private CareStep carry(Care step, Optional<String> sensor, long nowNanos, String when) {
    return switch (step) {
      case UNDO -> upkeep.undo(sensor);
      case DRIFT_FORGET -> upkeep.forgetDrift(sensor);
      case REVERSAL_FIRST -> upkeep.reversalFirst(nowNanos, when);
      case REVERSAL_SECOND -> upkeep.reversalSecond(nowNanos, when);
      case REVERSAL_CANCEL -> upkeep.cancel(Guide.Task.REVERSAL);
      case ALIGN_BEFORE -> upkeep.alignBefore(nowNanos);
      case ALIGN_FRONT_UP -> upkeep.alignAfter(true, nowNanos, when);
      case ALIGN_REAR_UP -> upkeep.alignAfter(false, nowNanos, when);
      case ALIGN_CANCEL -> upkeep.cancel(Guide.Task.ALIGN);
      case CALIBRATE_START -> upkeep.calibrate(sensor, when);
      case CALIBRATE_ACCEPT -> upkeep.accept();
      case CALIBRATE_CANCEL -> upkeep.cancel(Guide.Task.CALIBRATE);
    };
  }

  private void carryOut(String what, Supplier<CareStep> care) {
    SensorPost post = sensors.believed();
    SensorSetup before = post.setup();
    CareStep step = care.get();
    if (!post.setup().equals(before)) {
      keeper.setUpAnew();
      sites.setUpAnew();
      historian.noteZero(post.id(), clock.getAsLong());
    }
    if (step.done()) {
      answer.accept(LogLevel.INFO, what + ": " + step.said());
    } else {
      answer.accept(LogLevel.WARN, what + " refused: " + step.said());
    }
  }

  @Override
  public void mark() {
    inbox.leave(
        () -> {
          FloorReading floor = sensors.floor(clock.getAsLong());
          if (floor.isAtRest()) {
            answer.accept(LogLevel.INFO, spots.mark(floor.lean()));
          } else {
            answer.accept(LogLevel.WARN, "spot not remembered: the floor is moving or unknown");
          }
        });
  }

  @Override
  public void acknowledge(String alertId) {
    inbox.leave(() -> heed("acknowledge", keeper.acknowledge(alertId)));
  }

  @Override
  public void shelve(String alertId, double minutes) {
    inbox.leave(
        () -> {
          long lastsNanos = (long) (minutes * NANOS_PER_MINUTE);
          heed("shelve", keeper.shelve(alertId, lastsNanos, clock.getAsLong()));
        });
  }

  @Override
  public void history(HistoryRequest request, Consumer<byte[]> found) {
    historian.answer(request, found);
  }

  private void heed(String what, AlarmOutcome outcome) {
    if (outcome instanceof AlarmOutcome.Refused refused) {
      answer.accept(LogLevel.WARN, what + " refused: " + refused.reason());
    } else {
      lasting(kept.keepAlarms(keeper.rememberAlarms(clock.getAsLong())));
    }
  }

  private void lasting(Written written) {
    if (written instanceof Written.NotLasting trouble) {
      answer.accept(LogLevel.ERROR, trouble.trouble().text());
    } else if (written instanceof Written.Anew anew) {
      answer.accept(LogLevel.WARN, anew.trouble().text());
    }
  }
}
