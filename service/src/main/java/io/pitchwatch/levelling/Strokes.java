package io.pitchwatch.levelling;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Pad;
import java.util.ArrayList;
import java.util.List;

/** What lifts of the wheels leave the jacks inside their strokes. */
final class Strokes {

  private final Coach coach;
  private final Stance stance;
  private final List<JackPair> pairs;
  private final double pitchRad;
  private final double groundMm;

  /**
   * The strokes of a coach.
   *
   * @param coach whose jacks they are
   * @param pairs front to back
   * @param pitchRad on the bare ground
   * @param groundMm thickness of what lies under every tyre
   */
  Strokes(Coach coach, List<JackPair> pairs, double pitchRad, double groundMm) {
    this.coach = coach;
    this.stance = new Stance(coach);
    this.pairs = pairs;
    this.pitchRad = pitchRad;
    this.groundMm = groundMm;
  }

  /** What the raises alone limit: no pile is higher than its gap. None for a single pair. */
  List<Limit> raises() {
    List<Limit> limits = new ArrayList<>();
    if (pairs.size() > 1) {
      for (JackPair pair : pairs) {
        for (int low = -1; low <= 1; low += 2) {
          limits.add(new Limit(raise(pair, low), new double[stance.axles], strokeMm(pair, low)));
        }
      }
    }
    return limits;
  }

  /** What gap and raise limit, in whatever way these pads are shared out. */
  Piles piles(List<Pad> pads) {
    List<List<Limit>> feet = new ArrayList<>();
    List<PadWays.Room> rooms = new ArrayList<>();
    if (pairs.size() < 2) {
      // It may stay up.
      return Piles.any();
    }
    for (JackPair pair : pairs) {
      for (int side = -1; side <= 1; side += 2) {
        List<Limit> foot = new ArrayList<>();
        foot(pair, side, -1, foot);
        foot(pair, side, 1, foot);
        feet.add(foot);
        double highestMm = pair.clearanceMm() + groundMm + 2 * coach.levelling().stackMm();
        rooms.add(new PadWays.Room(highestMm, pair.footMm()));
      }
    }
    return new Piles(feet, new PadWays(pads, rooms).list());
  }

  /** The gap under a foot after docs/levelling.md; over three axles also that of a stiff body. */
  private void foot(JackPair pair, int side, int low, List<Limit> limits) {
    double[] raise = raise(pair, low);
    double mostMm = strokeMm(pair, low) - pair.clearanceMm() - groundMm;
    double[] along = stance.weights(pair.positionMm());
    double[] none = new double[stance.axles];
    double reach = side * stance.reach(pair);
    limits.add(new Limit(sum(raise, 1, along), sum(none, reach, along), mostMm));
    if (stance.axles > 2) {
      double[] lean = new double[stance.axles];
      for (int k = 0; k < stance.axles; k++) {
        lean[k] = side * stance.share[k] / stance.trackMm[k] * pair.spacingMm() / 2;
      }
      limits.add(new Limit(sum(raise, 1, rest(pair.positionMm())), lean, mostMm));
    }
  }

  /**
   * Stroke that is left after what a pair rises without anything under the wheels.
   *
   * @param low which end would be low, 1 the front, −1 the rear: the raise is no less than for
   *     either
   */
  private double strokeMm(JackPair pair, int low) {
    double slope = Math.tan(pitchRad);
    // The raise goes with tan(pitch − turn), and is reckoned with tan pitch − tan turn.
    double turn = coach.levelling().stackMm() / stance.wheelbaseMm();
    double reckonedMore = Math.abs(slope) * Math.max(turn * turn, slope * slope / 4);
    return pair.strokeMm()
        - JackPlanner.GIVES_MM
        - coach.levelling().contactMm()
        - share(pair, low) * lengthMm() * (low * slope - reckonedMore);
  }

  /** What each axle's mean lift adds to the raise. */
  private double[] raise(JackPair pair, int low) {
    double[] raise = new double[stance.axles];
    raise[0] = -low * share(pair, low) * lengthMm() / stance.wheelbaseMm();
    raise[stance.axles - 1] = -raise[0];
    return raise;
  }

  /** 1 for the pair at the low end, 0 for that at the high end. */
  private double share(JackPair pair, int low) {
    double towardsRear = (pairs.get(0).positionMm() - pair.positionMm()) / lengthMm();
    return low > 0 ? 1 - towardsRear : towardsRear;
  }

  private double lengthMm() {
    return pairs.get(0).positionMm() - pairs.get(pairs.size() - 1).positionMm();
  }

  /** What each axle's mean lift does to the body at a place. */
  private double[] rest(double xMm) {
    double[] rest = new double[stance.axles];
    for (int k = 0; k < stance.axles; k++) {
      rest[k] = stance.restOn(k).atMm(xMm);
    }
    return rest;
  }

  private static double[] sum(double[] one, double times, double[] other) {
    double[] sum = new double[one.length];
    for (int k = 0; k < sum.length; k++) {
      sum[k] = one[k] + times * other[k];
    }
    return sum;
  }
}
