package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One stand of the coach, from when it comes to rest until it sets off: what is laid, jacked and
 * sinks there, and the lean that follows, worked out step by step as time is asked for.
 *
 * <p>Between steps the lean goes straight. Steps are a second long while something is being done, a
 * minute or more while the ground moves, and else as long as nothing happens. Safe for several
 * threads.
 */
final class Stance {

  private final double startS;
  private final Parking parking;
  private final List<Change> changes;
  private final Samples samples = new Samples();

  /**
   * A stand.
   *
   * @param startS when the coach comes to rest, seconds; may be minus infinity
   * @param chassis the coach
   * @param ground where it stands
   * @param changes what happens there, in any order
   */
  Stance(double startS, Chassis chassis, Ground ground, List<Change> changes) {
    this.startS = startS;
    this.parking = new Parking(chassis, ground);
    this.changes = new ArrayList<>(changes);
    this.changes.sort(Comparator.comparingDouble(Change::startS));
    samples.add(startS, parking.attitude());
  }

  double startS() {
    return startS;
  }

  /** The straight piece of the lean's course in which an instant lies. */
  synchronized Piece piece(double timeS) {
    while (samples.lastS() <= timeS) {
      step();
    }
    return samples.piece(timeS);
  }

  private void step() {
    double fromS = samples.lastS();
    double toS = nextS(fromS);
    if (Double.isFinite(toS)) {
      for (Change change : changes) {
        if (toS > change.startS()) {
          change.act(toS, parking);
        }
      }
    }
    samples.add(toS, parking.attitude());
  }

  private double nextS(double fromS) {
    double nextS = Double.POSITIVE_INFINITY;
    for (Change change : changes) {
      if (fromS < change.startS()) {
        nextS = Math.min(nextS, change.startS());
      } else if (fromS < change.startS() + change.overS()) {
        double stepToS = fromS + change.stepS(fromS);
        nextS = Math.min(nextS, Math.min(stepToS, change.startS() + change.overS()));
      }
    }
    return nextS;
  }

  /** Something done to the coach, or to the ground under it. */
  interface Change {

    /** When it begins, seconds. */
    double startS();

    /** How long it takes, seconds, above 0; infinity if it never ends. */
    double overS();

    /** How long a step may be from a time in seconds on, seconds. */
    double stepS(double timeS);

    /** Brings about what there is of it by an instant after its start; called with rising times. */
    void act(double timeS, Parking parking);
  }

  /**
   * A straight piece of the lean's course.
   *
   * @param fromS its beginning, seconds
   * @param toS its end, seconds
   * @param from lean at its beginning
   * @param to lean at its end
   */
  record Piece(double fromS, double toS, Attitude from, Attitude to) {

    boolean isSteady() {
      return from.equals(to);
    }

    double rollRad(double timeS) {
      return from.rollRad() + share(timeS) * (to.rollRad() - from.rollRad());
    }

    double pitchRad(double timeS) {
      return from.pitchRad() + share(timeS) * (to.pitchRad() - from.pitchRad());
    }

    private double share(double timeS) {
      return isSteady() ? 0 : (timeS - fromS) / (toS - fromS);
    }
  }
}
