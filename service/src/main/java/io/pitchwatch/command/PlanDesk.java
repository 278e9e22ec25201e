package io.pitchwatch.command;

import io.pitchwatch.levelling.Site;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.Watchkeeper;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has plans made beside the rounds, one at a time: a hard one takes longer than a sample may wait.
 * All calls come from the thread of the rounds.
 */
final class PlanDesk {

  private static final Logger LOG = LoggerFactory.getLogger(PlanDesk.class);

  private final Watchkeeper keeper;
  private final Executor planner;
  private final Inbox inbox;
  private Optional<Site> underWay = Optional.empty();
  private Optional<Site> failed = Optional.empty();

  /**
   * A desk at which nothing is planned yet.
   *
   * @param keeper knows what should be planned
   * @param planner does it
   * @param inbox takes the plan back to the rounds
   */
  PlanDesk(Watchkeeper keeper, Executor planner, Inbox inbox) {
    this.keeper = keeper;
    this.planner = planner;
    this.inbox = inbox;
  }

  /** Has the plan made that is missing, if any. */
  void look() {
    Optional<Site> wanted = keeper.toPlan();
    if (underWay.isPresent() || wanted.isEmpty() || wanted.equals(failed)) {
      return;
    }
    underWay = wanted;
    planner.execute(() -> make(wanted.get()));
  }

  private void make(Site site) {
    try {
      Planned made = Planned.of(site);
      inbox.leave(
          () -> {
            underWay = Optional.empty();
            keeper.planned(made);
          });
    } catch (RuntimeException e) {
      LOG.error("planning failed for {}", site.lean(), e);
      inbox.leave(
          () -> {
            underWay = Optional.empty();
            failed = Optional.of(site);
          });
    }
  }
}
