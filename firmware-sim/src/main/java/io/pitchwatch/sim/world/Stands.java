package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the coach stands one after the other, and how it leans there; on the way from one to the
 * next the lean goes over smoothly.
 */
final class Stands {

  private final List<Stand> stands = new ArrayList<>();

  /**
   * The first stand, from the beginning of time.
   *
   * @param attitude how the coach leans there
   */
  Stands(Attitude attitude) {
    stands.add(new Stand(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, attitude));
  }

  /** Leaves the last stand at a time and reaches the next at another, seconds. */
  void move(double leaveS, double arriveS, Attitude attitude) {
    stands.add(new Stand(leaveS, arriveS, attitude));
  }

  /** The lean of the ground under the coach, and whether it is under way. */
  void add(double timeS, Sway sway) {
    Stand here = at(timeS);
    double rollRad = here.attitude.rollRad();
    double pitchRad = here.attitude.pitchRad();
    if (timeS < here.arriveS) {
      Attitude from = stands.get(stands.indexOf(here) - 1).attitude;
      double done = Ramp.smooth(timeS, here.leaveS, here.arriveS);
      rollRad = from.rollRad() + done * (rollRad - from.rollRad());
      pitchRad = from.pitchRad() + done * (pitchRad - from.pitchRad());
    }
    sway.lean(rollRad, pitchRad);
  }

  boolean underWay(double timeS) {
    return timeS < at(timeS).arriveS;
  }

  /** The next instant after which the coach sets off or stands, seconds. */
  double nextChangeS(double timeS) {
    double next = Double.POSITIVE_INFINITY;
    for (Stand stand : stands) {
      if (stand.leaveS > timeS) {
        next = Math.min(next, stand.leaveS);
      } else if (stand.arriveS > timeS) {
        next = Math.min(next, stand.arriveS);
      }
    }
    return next;
  }

  private Stand at(double timeS) {
    for (int i = stands.size() - 1; i > 0; i--) {
      if (timeS >= stands.get(i).leaveS) {
        return stands.get(i);
      }
    }
    return stands.get(0);
  }

  private record Stand(double leaveS, double arriveS, Attitude attitude) {}
}
