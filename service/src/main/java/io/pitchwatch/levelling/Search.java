package io.pitchwatch.levelling;

import io.pitchwatch.levelling.AxleChoices.Range;
import io.pitchwatch.levelling.Choices.Choice;
import io.pitchwatch.levelling.Prices.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best combination of choices, one for each axle, and proves it by leaving nothing out
 * that could be better.
 *
 * <p>It goes up by the number of pieces. A plan of more pieces is better only if its excess is
 * less, so what was found so far bounds the lean that is still of interest; inside one number of
 * pieces the order of preference is the order of leans, so each find narrows the bound further. The
 * bound, the twist and the shares of stiffness leave each axle a narrow range of turns, found by
 * bisection in the sorted choices. It ends at the first number of pieces whose best lies inside the
 * tolerance: the preference puts excess before pieces, and less than none there is not.
 */
final class Search {

  /** Two leans nearer to each other than this are the same, radians. */
  private static final double SAME_RAD = 1e-9;

  private final Stance stance;
  private final AxleChoices[] axles;
  private final Question question;
  private final double[] shareAfter;
  private final Choices[] level;
  private final long[] onBoard;
  private final Prices prices;
  private final Reach reach;
  private double pricedRad = Double.POSITIVE_INFINITY;
  private final int[] chosen;
  private final int[] least;
  private final double[] roomFromRad;
  private final double[] roomToRad;
  private final long[][] left;
  private final double[] meanMm;
  private double boundRad;
  private double liftFromMm;
  private double liftToMm;
  private @Nullable Find best;
  private @Nullable Find bestOfLevel;

  /**
   * What is asked.
   *
   * @param rollRad to be undone by the wheels, 0 or more
   * @param pitchRad of the floor
   * @param toleranceRad of the stay
   * @param twistRad most that two axles' turns may differ
   * @param pitchCounts whether the larger of roll and pitch is what counts, or roll alone
   * @param pitchFromRad least pitch that may remain
   * @param pitchToRad most pitch that may remain
   * @param accept asked last of what would be the best so far
   */
  record Question(
      double rollRad,
      double pitchRad,
      double toleranceRad,
      double twistRad,
      boolean pitchCounts,
      double pitchFromRad,
      double pitchToRad,
      Predicate<Find> accept) {

    /** Whether ends are lifted against each other, and not only sides. */
    boolean movesEnds() {
      return pitchCounts || Double.isFinite(pitchFromRad);
    }

    Reach.Terms terms() {
      return new Reach.Terms(rollRad, twistRad, movesEnds());
    }

    double lean(double roll, double pitch) {
      return pitchCounts ? Math.max(Math.abs(roll), Math.abs(pitch)) : Math.abs(roll);
    }
  }

  /** A combination. */
  @SuppressWarnings("ArrayRecordComponent") // Millions are compared; nobody writes to it.
  record Find(
      Choice[] choices, double rollRad, double pitchRad, double leanRad, double tallestMm) {}

  Search(Stance stance, AxleChoices[] axles, long[] onBoard, Prices prices, Question question) {
    this.stance = stance;
    this.axles = axles;
    this.question = question;
    this.level = new Choices[axles.length];
    this.chosen = new int[axles.length];
    this.least = new int[axles.length];
    this.roomFromRad = new double[axles.length + 1];
    this.roomToRad = new double[axles.length + 1];
    this.left = new long[axles.length + 1][onBoard.length];
    this.onBoard = onBoard;
    this.prices = prices;
    this.reach = new Reach(stance, axles, question.terms());
    this.meanMm = new double[axles.length];
    this.shareAfter = new double[axles.length];
    for (int k = axles.length - 2; k >= 0; k--) {
      shareAfter[k] = shareAfter[k + 1] + stance.share[k + 1];
    }
  }

  /**
   * The best combination, or null if there is none.
   *
   * @param mostPieces more than can be laid in any way
   */
  @Nullable Find run(int mostPieces) {
    boundRad = question.lean(question.rollRad(), question.pitchRad()) + SAME_RAD;
    for (int n = 0; n <= mostPieces; n++) {
      bestOfLevel = null;
      if (!narrow()) {
        return best;
      }
      if (suffice(n)) {
        split(0, n);
      }
      if (bestOfLevel != null) {
        best = bestOfLevel;
        long excess = Excess.hundredths(best.leanRad(), question.toleranceRad());
        if (excess == 0) {
          return best;
        }
        boundRad = Excess.leanBelowRad(excess, question.toleranceRad());
      }
    }
    return best;
  }

  /** What the bound leaves to each axle; whether it leaves anything. */
  private boolean narrow() {
    if (boundRad >= pricedRad) {
      return true;
    }
    pricedRad = boundRad;
    boundPitch();
    reach.narrow(new Reach.Wish(boundRad + SAME_RAD, liftFromMm, liftToMm));
    roomFromRad[0] = Double.NEGATIVE_INFINITY;
    roomToRad[0] = Double.POSITIVE_INFINITY;
    for (int k = 0; k < axles.length; k++) {
      axles[k].want(
          new Range(reach.fromRad[k], reach.toRad[k]), new Range(reach.fromMm[k], reach.toMm[k]));
      roomFromRad[0] = Math.max(roomFromRad[0], reach.fromRad[k] - question.twistRad());
      roomToRad[0] = Math.min(roomToRad[0], reach.toRad[k] + question.twistRad());
    }
    return !reach.isEmpty()
        && Arrays.stream(axles).noneMatch(AxleChoices::wantsNone)
        && isAffordable();
  }

  private boolean isAffordable() {
    List<List<Budget>> budgets = prices.budgets(List.of(axles));
    for (int k = 0; k < axles.length; k++) {
      for (Budget budget : budgets.get(k)) {
        if (axles[k].leastCost(budget.price(), null) > budget.most()) {
          return false;
        }
      }
      int chooser = k;
      axles[k].afford(budgets.get(k), (p, turn, mean) -> othersCost(chooser, p, turn, mean));
    }
    return true;
  }

  /** The least that the axles but one cost, given what that one does. */
  private double othersCost(int k, int price, double turnRad, double meanMm) {
    double cost = 0;
    for (int j = 0; j < axles.length; j++) {
      if (j != k) {
        cost +=
            axles[j].leastCost(
                price, reach.leastTurnRad(j, k, turnRad), reach.leastMeanMm(j, k, meanMm));
      }
    }
    return cost;
  }

  private void boundPitch() {
    double from = question.pitchFromRad();
    double to = question.pitchToRad();
    if (question.pitchCounts()) {
      from = Math.max(from, -boundRad - SAME_RAD);
      to = Math.min(to, boundRad + SAME_RAD);
    }
    liftFromMm = liftMm(question.pitchRad() - to);
    liftToMm = liftMm(question.pitchRad() - from);
  }

  private double liftMm(double turnRad) {
    return Math.abs(turnRad) >= Math.PI / 2
        ? Math.copySign(Double.MAX_VALUE, turnRad)
        : stance.wheelbaseMm() * Math.tan(turnRad);
  }

  /** Finds the fewest pieces each axle could have; whether that many are enough for all. */
  private boolean suffice(int pieces) {
    int spare = pieces - Arrays.stream(least).sum();
    for (int k = 0; k < axles.length; k++) {
      while (spare >= 0 && axles[k].ofPieces(least[k]).isEmpty()) {
        // What was wanted of an axle gets less, never more.
        least[k]++;
        spare--;
      }
    }
    return spare >= 0;
  }

  /** Shares the pieces out among the axles in every way. */
  private void split(int k, int left) {
    if (k == axles.length - 1) {
      level[k] = axles[k].ofPieces(left);
      if (!level[k].isEmpty() && mayReach()) {
        join(0, 0);
      }
      return;
    }
    int others = 0;
    for (int j = k + 1; j < axles.length; j++) {
      others += least[j];
    }
    for (int n = least[k]; n <= left - others; n++) {
      level[k] = axles[k].ofPieces(n);
      if (!level[k].isEmpty()) {
        split(k + 1, left - n);
      }
    }
  }

  /** Whether what was taken could do at all. */
  private boolean mayReach() {
    double least = 0;
    double most = 0;
    for (int k = 0; k < axles.length; k++) {
      least += stance.share[k] * level[k].leastTurnRad();
      most += stance.share[k] * level[k].mostTurnRad();
    }
    Choices front = level[0];
    Choices rear = level[axles.length - 1];
    return most >= question.rollRad() - boundRad - SAME_RAD
        && least <= question.rollRad() + boundRad + SAME_RAD
        && (axles.length == 1
            || (front.mostMeanMm - rear.leastMeanMm >= liftFromMm
                && front.leastMeanMm - rear.mostMeanMm <= liftToMm))
        && leaveTheLeast();
  }

  /** What is on board less the least that all axles but the first take; whether it suffices. */
  private boolean leaveTheLeast() {
    System.arraycopy(onBoard, 0, left[0], 0, onBoard.length);
    for (int k = axles.length - 1; k >= 0; k--) {
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
  private void join(int k, double turnedRad) {
    Choices choices = level[k];
    double share = stance.share[k];
    double missing = question.rollRad() - turnedRad;
    double reach = shareAfter[k];
    double fromRad =
        Math.max(roomFromRad[k], (missing - boundRad - SAME_RAD - reach * roomToRad[k]) / share);
    for (int i = choices.from(fromRad); i < choices.count; i++) {
      double turn = choices.turnRad[i];
      // The bound may have come down since the last choice.
      if (turn > roomToRad[k]
          || share * turn > missing + boundRad + SAME_RAD - reach * roomFromRad[k]) {
        return;
      }
      if (!Inventory.holds(left[k], choices.use[i])) {
        continue;
      }
      chosen[k] = i;
      meanMm[k] = choices.meanMm[i];
      if (k == axles.length - 1) {
        finish(turnedRad + share * turn);
      } else {
        roomFromRad[k + 1] = Math.max(roomFromRad[k], turn - question.twistRad());
        roomToRad[k + 1] = Math.min(roomToRad[k], turn + question.twistRad());
        Inventory.give(left[k], choices.use[i], level[k + 1].leastUse, left[k + 1]);
        join(k + 1, turnedRad + share * turn);
      }
    }
  }

  private void finish(double turnedRad) {
    int last = axles.length - 1;
    double liftMm = meanMm[0] - meanMm[last];
    if (last > 0
        && (liftMm < liftFromMm || liftMm > liftToMm || (question.movesEnds() && hangs()))) {
      return;
    }
    double roll = question.rollRad() - turnedRad;
    double pitch = question.pitchRad() - stance.pitchTurnRad(meanMm[0], meanMm[last]);
    double lean = question.lean(roll, pitch);
    if (lean > boundRad + SAME_RAD) {
      return;
    }
    double tallest = 0;
    for (int k = 0; k <= last; k++) {
      tallest = Math.max(tallest, level[k].get(chosen[k]).tallestMm());
    }
    Find rival = bestOfLevel;
    boolean better =
        rival == null
            ? isFewer(lean)
            : lean < rival.leanRad() - SAME_RAD
                || (lean <= rival.leanRad() + SAME_RAD && tallest < rival.tallestMm());
    if (better) {
      Find find = new Find(choices(), roll, pitch, lean, tallest);
      if (question.accept().test(find)) {
        bestOfLevel = find;
        boundRad = Math.min(boundRad, lean);
        boundPitch();
      }
    }
  }

  /** Whether a lean is worth more pieces than the best so far has. */
  private boolean isFewer(double lean) {
    return best == null
        || Excess.hundredths(lean, question.toleranceRad())
            < Excess.hundredths(best.leanRad(), question.toleranceRad());
  }

  /** Whether an axle between the outer ones would hang from the body. */
  private boolean hangs() {
    int last = axles.length - 1;
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
    Choice[] choices = new Choice[axles.length];
    for (int k = 0; k < choices.length; k++) {
      choices[k] = level[k].get(chosen[k]);
    }
    return choices;
  }
}
