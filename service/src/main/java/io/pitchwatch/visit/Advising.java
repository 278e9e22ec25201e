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

  private final Coach coach;
  private final BareLean bareLean;
  private @Nullable Site wanted;
  private @Nullable Planned planned;

  Advising(Coach coach) {
    this.coach = coach;
    this.bareLean = new BareLean(coach);
  }

  /** The site for which there should be a plan and is none; empty while all is planned. */
  Optional<Site> toPlan() {
    Site site = wanted;
    Planned done = planned;
    boolean isDone = done != null && done.plan().site().equals(site);
    return site == null || isDone ? Optional.empty() : Optional.of(site);
  }

  /** A plan is made; one that nobody wants any more is dropped. */
  void take(Planned made) {
    if (made.plan().site().equals(wanted)) {
      planned = made;
    }
  }

  /** What the driver is told after this reading. */
  Advice round(FloorReading floor, VisitState state) {
    Optional<Lean> bare = bareLean.read(floor, state.phase(), state.laid());
    if (bare.isEmpty() || !isPlannable(bare.get())) {
      wanted = null;
      planned = null;
      return Advice.NONE;
    }
    wanted = new Site(coach, bare.get(), state.surface(), state.stay());
    Planned made = planned;
    if (made == null || floor.state() == FloorState.UNKNOWN) {
      return Advice.NONE;
    }
    return new Advice(Optional.of(made), next(made, bare.get(), floor, state.laid()));
  }

  private static boolean isPlannable(Lean lean) {
    return Math.max(Math.abs(lean.rollRad()), Math.abs(lean.pitchRad())) <= Site.MOST_RAD;
  }

  private String next(Planned made, Lean bare, FloorReading floor, Laid laid) {
    Lean goal = bare.minus(bareLean.lift(laid));
    boolean moving = floor.state() == FloorState.MOVING;
    NextStep.Standing standing =
        new NextStep.Standing(
            moving ? floor.live() : floor.lean(), floor.uncertaintyRad(), laid.pieces() > 0);
    return NextStep.of(made.plan(), goal, standing);
  }
}
