package io.pitchwatch.sim.world;

import java.util.List;

/** Where the coach stands one after the other; on the way the lean goes over smoothly. */
final class Stands {

  private final List<Stance> stances;
  private final List<Double> leavesS;

  /**
   * Stands in order of time.
   *
   * @param stances where it stands; the first from the beginning of time
   * @param leavesS when it sets off from each of them but the last, seconds
   */
  Stands(List<Stance> stances, List<Double> leavesS) {
    this.stances = List.copyOf(stances);
    this.leavesS = List.copyOf(leavesS);
  }

  boolean underWay(double timeS) {
    int here = index(timeS);
    return here < leavesS.size() && timeS >= leavesS.get(here);
  }

  /** The piece of the lean's course in which an instant at rest lies. */
  Stance.Piece piece(double timeS) {
    int here = index(timeS);
    Stance.Piece piece = stances.get(here).piece(timeS);
    double leaveS = here < leavesS.size() ? leavesS.get(here) : Double.POSITIVE_INFINITY;
    if (piece.toS() <= leaveS) {
      return piece;
    }
    Attitude at =
        piece.isSteady() ? piece.to() : new Attitude(piece.rollRad(leaveS), piece.pitchRad(leaveS));
    return new Stance.Piece(piece.fromS(), leaveS, piece.from(), at);
  }

  /** The lean on the way from one stand to the next. */
  void addUnderWay(double timeS, Sway sway) {
    int here = index(timeS);
    double leaveS = leavesS.get(here);
    double arriveS = stances.get(here + 1).startS();
    Stance.Piece left = stances.get(here).piece(leaveS);
    Stance.Piece reached = stances.get(here + 1).piece(arriveS);
    double done = Ramp.smooth(timeS, leaveS, arriveS);
    sway.lean(
        (1 - done) * left.rollRad(leaveS) + done * reached.from().rollRad(),
        (1 - done) * left.pitchRad(leaveS) + done * reached.from().pitchRad());
  }

  /** The next instant after this one at which the coach sets off or comes to rest, seconds. */
  double nextChangeS(double timeS) {
    int here = index(timeS);
    if (here == leavesS.size()) {
      return Double.POSITIVE_INFINITY;
    }
    return timeS < leavesS.get(here) ? leavesS.get(here) : stances.get(here + 1).startS();
  }

  private int index(double timeS) {
    int here = stances.size() - 1;
    while (here > 0 && timeS < stances.get(here).startS()) {
      here--;
    }
    return here;
  }
}
