package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.NextStep;
import io.pitchwatch.levelling.Site;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Knows what should be planned, keeps what was, and says from reading to reading what is next. */
final class Advising {

  private static final Advice WAITING =
      new Advice(Optional.empty(), "Waiting for the coach to stand still: then it is planned");

  private static final Advice PLANNING =
      new Advice(Optional.empty(), "The coach stands: working out the plan");

  private static final Advice FAILED =
      new Advice(Optional.empty(), "No plan could be worked out for this lean: see the log");

  private final Coach coach;
  private final BareLean bareLean;
  private @Nullable Site wanted;
  private @Nullable Site unplannable;
  private @Nullable Planned planned;

  /** What the wheels stand on since the last reading; null if they are on their way. */
  private @Nullable Laid upOn;

  Advising(Coach coach) {
    this.coach = coach;
    this.bareLean = new BareLean(coach);
  }

  /** The site for which there should be a plan and is none; empty while all is planned. */
  Optional<Site> toPlan() {
    Site site = wanted;
    Planned done = planned;
    boolean isDone = done != null && done.plan().site().equals(site);
    return site == null || isDone || site.equals(unplannable)
        ? Optional.empty()
        : Optional.of(site);
  }

  /** A plan is made; one that nobody wants any more is dropped. */
  void take(Planned made) {
    if (made.plan().site().equals(wanted)) {
      planned = made;
    }
  }

  /** No plan came of it; it is not asked for again until something about the site is another. */
  void giveUp(Site site) {
    unplannable = site;
  }

  /** What was planned rests on leans that count no longer. */
  void forget() {
    bareLean.forget();
  }

  /** What the driver is told after this reading. */
  Advice round(FloorReading floor, VisitState state) {
    Optional<Lean> bare = bareLean.read(floor, state);
    Optional<Lean> plannable = bare.filter(lean -> Site.isPlannable(lean.largestRad()));
    boolean takesLong = wanted != null;
    wanted =
        plannable.map(lean -> new Site(coach, lean, state.surface(), state.stay())).orElse(null);
    Planned made = plannable.isPresent() ? planned : null;
    planned = made;
    if (floor.state() == FloorState.UNKNOWN) {
      return Advice.NONE;
    }
    if (made != null) {
      return new Advice(Optional.of(made), next(made, bare.get(), floor, state.laid()));
    }
    if (wanted != null && wanted.equals(unplannable)) {
      return FAILED;
    }
    if (wanted != null && takesLong) {
      return PLANNING;
    }
    boolean waits = state.phase() != Phase.UNDER_WAY && (bare.isEmpty() || plannable.isPresent());
    return waits ? WAITING : Advice.NONE;
  }

  private String next(Planned made, Lean bare, FloorReading floor, Laid laid) {
    Lean goal = bare.minus(bareLean.lift(laid));
    boolean moving = floor.state() == FloorState.MOVING;
    NextStep.Standing standing =
        new NextStep.Standing(
            moving ? floor.live() : floor.lean(),
            floor.randomRad(),
            laid.pieces() > 0,
            laid.equals(upOn));
    upOn = NextStep.isUp(made.plan(), goal, standing) ? laid : null;
    return NextStep.of(made.plan(), goal, standing);
  }
}
