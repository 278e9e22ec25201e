package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Choice;
import org.jspecify.annotations.Nullable;

/**
 * Joins choices, one for each axle, to the best combination of so many pieces. The bound, the twist
 * and the shares of stiffness leave each axle a narrow range of turns, found by bisection in the
 * sorted choices; inside one number of pieces the order of preference is the order of leans, so
 * each find brings the bound down.
 */
final class Join {

  private final Stance stance;
  private final Question question;
  private final Bound bound;
  private final long[] onBoard;
  private final double[] shareAfter;
  private final int[] chosen;
  private final double[] meanMm;
  private final double[] roomFromRad;
  private final double[] roomToRad;
  private final long[][] left;
  private Choices[] level = {};
  private @Nullable Find fewer;
  private @Nullable Find best;

  /**
   * For one search.
   *
   * @param onBoard pieces, packed
   */
  Join(Stance stance, Question question, Bound bound, long[] onBoard) {
    this.stance = stance;
    this.question = question;
    this.bound = bound;
    this.onBoard = onBoard;
    shareAfter = new double[stance.axles];
    chosen = new int[stance.axles];
    meanMm = new double[stance.axles];
    roomFromRad = new double[stance.axles + 1];
    roomToRad = new double[stance.axles + 1];
    left = new long[stance.axles + 1][onBoard.length];
    for (int k = stance.axles - 2; k >= 0; k--) {
      shareAfter[k] = shareAfter[k + 1] + stance.share[k + 1];
    }
  }

  /** From now on the axles turn within this reach. */
  void within(Reach reach) {
    roomFromRad[0] = Double.NEGATIVE_INFINITY;
    roomToRad[0] = Double.POSITIVE_INFINITY;
    for (int k = 0; k < stance.axles; k++) {
      roomFromRad[0] = Math.max(roomFromRad[0], reach.fromRad[k] - question.twistRad());
      roomToRad[0] = Math.min(roomToRad[0], reach.toRad[k] + question.twistRad());
    }
  }

  /**
   * Combinations of another number of pieces follow.
   *
   * @param ofFewer the best of fewer pieces; null if there is none
   */
  void begin(@Nullable Find ofFewer) {
    fewer = ofFewer;
    best = null;
  }

  /** The best since the last beginning; null if there is none. */
  @Nullable Find best() {
    return best;
  }

  /** Tries all combinations of these choices of each axle. */
  void join(Choices[] choices) {
    level = choices;
    if (mayReach() && leaveTheLeast()) {
      choose(0, 0);
    }
  }

  /** Whether what was taken could do at all. */
  private boolean mayReach() {
    double least = 0;
    double most = 0;
    for (int k = 0; k < level.length; k++) {
      least += stance.share[k] * level[k].leastTurnRad();
      most += stance.share[k] * level[k].mostTurnRad();
    }
    Choices front = level[0];
    Choices rear = level[level.length - 1];
    return most >= question.rollRad() - bound.mostRad()
        && least <= question.rollRad() + bound.mostRad()
        && (level.length == 1
            || (front.mostMeanMm - rear.leastMeanMm >= bound.liftFromMm()
                && front.leastMeanMm - rear.mostMeanMm <= bound.liftToMm()));
  }

  /** What is on board less the least that all axles but the first take; whether it suffices. */
  private boolean leaveTheLeast() {
    System.arraycopy(onBoard, 0, left[0], 0, onBoard.length);
    for (int k = level.length - 1; k >= 0; k--) {
      if (!Inventory.holds(left[0], level[k].leastUse)) {
        return false;
      }
      if (k > 0) {
        Inventory.take(left[0], level[k].leastUse, left[0]);
      }
    }
    return true;
  }

  /** Chooses for axle k, given what the axles before it turn together. */
  private void choose(int k, double turnedRad) {
    Choices choices = level[k];
    double share = stance.share[k];
    double missing = question.rollRad() - turnedRad;
    double reach = shareAfter[k];
    double fromRad =
        Math.max(roomFromRad[k], (missing - bound.mostRad() - reach * roomToRad[k]) / share);
    for (int i = choices.from(fromRad); i < choices.count; i++) {
      double turn = choices.turnRad[i];
      // The bound may have come down since the last choice.
      if (turn > roomToRad[k]
          || share * turn > missing + bound.mostRad() - reach * roomFromRad[k]) {
        return;
      }
      if (!Inventory.holds(left[k], choices.use[i])) {
        continue;
      }
      chosen[k] = i;
      meanMm[k] = choices.meanMm[i];
      if (k == level.length - 1) {
        finish(turnedRad + share * turn);
      } else {
        roomFromRad[k + 1] = Math.max(roomFromRad[k], turn - question.twistRad());
        roomToRad[k + 1] = Math.min(roomToRad[k], turn + question.twistRad());
        Inventory.give(left[k], choices.use[i], level[k + 1].leastUse, left[k + 1]);
        choose(k + 1, turnedRad + share * turn);
      }
    }
  }

  private void finish(double turnedRad) {
    int last = level.length - 1;
    double liftMm = meanMm[0] - meanMm[last];
    if (last > 0
        && (liftMm < bound.liftFromMm()
            || liftMm > bound.liftToMm()
            || (question.movesEnds() && hangs()))) {
      return;
    }
    double roll = question.rollRad() - turnedRad;
    double pitch = question.pitchRad() - stance.pitchTurnRad(meanMm[0], meanMm[last]);
    double lean = question.lean(roll, pitch);
    if (lean > bound.mostRad()) {
      return;
    }
    double tallest = 0;
    for (int k = 0; k <= last; k++) {
      tallest = Math.max(tallest, level[k].get(chosen[k]).tallestMm());
    }
    if (isBetter(lean, tallest)) {
      Find find = new Find(choices(), roll, pitch, lean, tallest);
      if (question.accept().test(find)) {
        best = find;
        bound.lower(lean);
      }
    }
  }

  private boolean isBetter(double lean, double tallestMm) {
    return best == null
        ? isWorthMorePieces(lean)
        : lean < best.leanRad() - Bound.SAME_RAD
            || (lean <= best.leanRad() + Bound.SAME_RAD && tallestMm < best.tallestMm());
  }

  private boolean isWorthMorePieces(double lean) {
    return fewer == null
        || Excess.hundredths(lean, question.toleranceRad())
            < Excess.hundredths(fewer.leanRad(), question.toleranceRad());
  }

  /** Whether an axle between the outer ones would hang from the body. */
  private boolean hangs() {
    int last = level.length - 1;
    for (int k = 1; k < last; k++) {
      double along = (stance.xMm[0] - stance.xMm[k]) / stance.wheelbaseMm();
      double bodyMm = meanMm[0] + along * (meanMm[last] - meanMm[0]);
      if (bodyMm - meanMm[k] > stance.droopMm[k]) {
        return true;
      }
    }
    return false;
  }

  private Choice[] choices() {
    Choice[] choices = new Choice[level.length];
    for (int k = 0; k < choices.length; k++) {
      choices[k] = level[k].get(chosen[k]);
    }
    return choices;
  }
}
