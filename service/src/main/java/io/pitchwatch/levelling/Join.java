package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Choice;
import io.pitchwatch.levelling.Choices.Range;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Joins choices, one for each axle, to the best combination of so many pieces. The bound, the twist
 * and the shares of stiffness leave each axle a narrow range of turns, pitch and limits one of mean
 * lifts; the axle with the fewest choices comes first, so that the longest list is only asked for
 * what fits. Inside one number of pieces the order of preference is the order of leans, so each
 * find brings the bound down.
 */
final class Join {

  /** Rounding must never leave out what lies on a limit. */
  private static final double ROUNDING_MM = 1e-6;

  /** What comes of it. */
  final BestFind best;

  private final Stance stance;
  private final Question question;
  private final Bound bound;
  private final long[] onBoard;

  /** Axles as they are chosen for; the arrays of steps go by places in this. */
  private int[] order = {};

  private final int[] chosen;

  /** What was chosen; or what there is to choose from, before it is. */
  private final Box box;

  private final double[] fromMm;
  private final double[] toMm;
  private final Box open;
  private Limits limits;
  private final double[] roomFromRad;
  private final double[] roomToRad;
  private final long[][] left;
  private Choices[] level = {};

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
    best = new BestFind(question);
    chosen = new int[stance.axles];
    box = new Box(stance.axles);
    fromMm = box.fromMm;
    toMm = box.toMm;
    open = new Box(stance.axles);
    limits = question.limits();
    roomFromRad = new double[stance.axles + 1];
    roomToRad = new double[stance.axles + 1];
    left = new long[stance.axles + 1][onBoard.length];
  }

  /** From now on the axles turn within this reach. */
  void within(Reach reach) {
    limits = reach.limits();
    System.arraycopy(reach.rightOnly(), 0, box.rightOnly, 0, stance.axles);
    roomFromRad[0] = Double.NEGATIVE_INFINITY;
    roomToRad[0] = Double.POSITIVE_INFINITY;
    for (int k = 0; k < stance.axles; k++) {
      roomFromRad[0] = Math.max(roomFromRad[0], reach.fromRad[k] - question.twistRad());
      roomToRad[0] = Math.min(roomToRad[0], reach.toRad[k] + question.twistRad());
    }
  }

  /** Tries all combinations of these choices of each axle. */
  void join(Choices[] choices) {
    level = choices;
    if (mayReach()) {
      order =
          IntStream.range(0, level.length)
              .boxed()
              .sorted(Comparator.comparingInt(k -> level[k].count))
              .mapToInt(Integer::intValue)
              .toArray();
      for (int k = 0; k < level.length; k++) {
        open.fromMm[k] = level[k].leastMeanMm;
        open.toMm[k] = level[k].mostMeanMm;
        open.fromApartMm[k] = stance.trackMm[k] * Math.tan(level[k].leastTurnRad());
        open.toApartMm[k] = stance.trackMm[k] * Math.tan(level[k].mostTurnRad());
        box.take(k, open);
      }
      if (leaveTheLeast()) {
        choose(0, 0);
      }
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
    for (int step = level.length - 1; step >= 0; step--) {
      long[] least = level[order[step]].leastUse;
      if (!Inventory.holds(left[0], least)) {
        return false;
      }
      if (step > 0) {
        Inventory.take(left[0], least, left[0]);
      }
    }
    return true;
  }

  /** Chooses for the next axle, given what those before it turn together. */
  private void choose(int step, double turnedRad) {
    int k = order[step];
    double missing = question.rollRad() - turnedRad;
    double fromRad = (missing - bound.mostRad() - mostAfter(step)) / stance.share[k];
    double toRad = (missing + bound.mostRad() - leastAfter(step)) / stance.share[k];
    level[k].visit(
        left[step],
        turnRad(
            k, new Range(Math.max(roomFromRad[step], fromRad), Math.min(roomToRad[step], toRad))),
        meanMm(k),
        i -> choose(step, turnedRad, i));
    box.take(k, open);
  }

  /** The most that the axles after this step turn the body. */
  private double mostAfter(int step) {
    double sum = 0;
    for (int later = step + 1; later < level.length; later++) {
      int k = order[later];
      sum += stance.share[k] * Math.min(roomToRad[step], level[k].mostTurnRad());
    }
    return sum;
  }

  private double leastAfter(int step) {
    double sum = 0;
    for (int later = step + 1; later < level.length; later++) {
      int k = order[later];
      sum += stance.share[k] * Math.max(roomFromRad[step], level[k].leastTurnRad());
    }
    return sum;
  }

  /** Takes one choice; whether the next one, which turns further, may do as well. */
  private boolean choose(int step, double turnedRad, int choice) {
    int k = order[step];
    double turnRad = level[k].turnRad[choice];
    double together = turnedRad + stance.share[k] * turnRad;
    // The bound may have come down since the last choice.
    if (together + leastAfter(step) > question.rollRad() + bound.mostRad()) {
      return false;
    }
    chosen[k] = choice;
    double apartMm = limits.askApart ? stance.trackMm[k] * Math.tan(turnRad) : 0;
    box.put(k, level[k].meanMm[choice], apartMm);
    if (step == level.length - 1) {
      finish(together);
      return true;
    }
    roomFromRad[step + 1] = Math.max(roomFromRad[step], turnRad - question.twistRad());
    roomToRad[step + 1] = Math.min(roomToRad[step], turnRad + question.twistRad());
    long[] spared = level[order[step + 1]].leastUse;
    Inventory.give(left[step], level[k].use[choice], spared, left[step + 1]);
    choose(step + 1, together);
    return true;
  }

  /** What of these turns of an axle the limits leave, given the lifts of the others. */
  private Range turnRad(int k, Range range) {
    if (!limits.askApart) {
      return range;
    }
    Range apartMm = limits.apartMm(k, box);
    double fromRad = Math.atan((apartMm.from() - ROUNDING_MM) / stance.trackMm[k]);
    double toRad = Math.atan((apartMm.to() + ROUNDING_MM) / stance.trackMm[k]);
    return range.and(new Range(fromRad, toRad));
  }

  /** What mean lifts of an axle the pitch and the limits leave, given those of the others. */
  private Range meanMm(int k) {
    if (!question.movesEnds()) {
      return Range.ANY;
    }
    int last = level.length - 1;
    Range left = limits.meanMm(k, box);
    double least = left.from();
    double most = left.to();
    if (last > 0 && k == 0) {
      least = Math.max(least, fromMm[last] + bound.liftFromMm());
      most = Math.min(most, toMm[last] + bound.liftToMm());
    } else if (last > 0 && k == last) {
      least = Math.max(least, fromMm[0] - bound.liftToMm());
      most = Math.min(most, toMm[0] - bound.liftFromMm());
    }
    return new Range(least - ROUNDING_MM, most + ROUNDING_MM);
  }

  private void finish(double turnedRad) {
    int last = level.length - 1;
    double liftMm = fromMm[0] - fromMm[last];
    if (last > 0
        && (liftMm < bound.liftFromMm() || liftMm > bound.liftToMm() || !limits.hold(box))) {
      return;
    }
    double roll = question.rollRad() - turnedRad;
    double pitch = question.pitchRad() - stance.pitchTurnRad(fromMm[0], fromMm[last]);
    double lean = question.lean(roll, pitch);
    if (lean > bound.mostRad()) {
      return;
    }
    double tallest = 0;
    for (int k = 0; k <= last; k++) {
      tallest = Math.max(tallest, level[k].get(chosen[k]).tallestMm());
    }
    if (best.isWorseThan(lean, tallest)) {
      Find find = new Find(choices(), roll, pitch, lean, tallest);
      if (question.accept().test(find)) {
        best.set(find);
        bound.lower(lean);
      }
    }
  }

  private Choice[] choices() {
    Choice[] choices = new Choice[level.length];
    for (int k = 0; k < choices.length; k++) {
      choices[k] = level[k].get(chosen[k]);
    }
    return choices;
  }
}
