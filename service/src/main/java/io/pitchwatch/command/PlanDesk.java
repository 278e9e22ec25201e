package io.pitchwatch.command;

import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.mqtt.homie.LogLevel;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.Watchkeeper;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has plans made beside the rounds, one at a time: a hard one takes longer than a sample may wait.
 * All calls come from the thread of the rounds. What comes of a plan is picked up here, not left in
 * the inbox: a flood of orders must not lose it.
 */
final class PlanDesk {

  private static final Logger LOG = LoggerFactory.getLogger(PlanDesk.class);

  private final Watchkeeper keeper;
  private final Function<Site, Planned> plan;
  private final Executor planner;
  private final BiConsumer<LogLevel, String> say;
  private final AtomicReference<@Nullable Outcome> outcome = new AtomicReference<>();
  private boolean underWay;

  /**
   * A desk at which nothing is planned yet.
   *
   * @param keeper knows what should be planned
   * @param plan how
   * @param planner does it
   * @param say tells people that something failed
   */
  PlanDesk(
      Watchkeeper keeper,
      Function<Site, Planned> plan,
      Executor planner,
      BiConsumer<LogLevel, String> say) {
    this.keeper = keeper;
    this.plan = plan;
    this.planner = planner;
    this.say = say;
  }

  /** What came of planning. */
  private sealed interface Outcome {
    record Made(Planned planned) implements Outcome {}

    record Failed(Site site, Throwable why) implements Outcome {}
  }

  /** Picks up what was planned, and has the plan made that is missing, if any. */
  void look() {
    pickUp();
    Optional<Site> wanted = keeper.toPlan();
    if (!underWay && wanted.isPresent()) {
      underWay = true;
      planner.execute(() -> outcome.set(make(wanted.get())));
      // A planner that works on this very thread, as in a rehearsal, is done by now.
      pickUp();
    }
  }

  /** An error counts as well: a plan that takes all memory must not end planning for good. */
  private Outcome make(Site site) {
    try {
      return new Outcome.Made(plan.apply(site));
    } catch (RuntimeException | Error e) {
      return new Outcome.Failed(site, e);
    }
  }

  private void pickUp() {
    Outcome came = outcome.getAndSet(null);
    if (came == null) {
      return;
    }
    underWay = false;
    if (came instanceof Outcome.Made made) {
      keeper.planned(made.planned());
    } else if (came instanceof Outcome.Failed failed) {
      keeper.unplannable(failed.site());
      String lean = LeanText.of(failed.site().lean(), 2);
      LOG.error("planning failed for {}", lean, failed.why());
      say.accept(
          LogLevel.ERROR,
          "No plan could be worked out for "
              + lean
              + ": a fault of this program, please report it");
    }
  }
}
