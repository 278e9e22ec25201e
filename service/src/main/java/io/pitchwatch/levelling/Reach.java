package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import java.util.Arrays;

/**
 * Between what turns and what mean lifts each axle of a plan lies whose lean does not exceed a
 * bound: what roll, twist, pitch, limits and the tallest stack leave, each narrowing the others
 * until nothing changes.
 */
final class Reach {

  private static final int ROUNDS = 30;
  private static final double SAME = 1e-7;

  /** Rounding must never leave out a plan that lies on the bound: radians, millimetres. */
  private static final double SLACK_RAD = 1e-9;

  private static final double SLACK_MM = 1e-5;

  final double[] fromRad;
  final double[] toRad;
  final double[] fromMm;
  final double[] toMm;

  private final Stance stance;
  private final Box box;
  private Limits limits;
  private final double[] tallestMm;
  private final Terms terms;
  private Wish wish = new Wish(0, 0, 0);

  /**
   * What does not change during a search.
   *
   * @param rollRad to be undone
   * @param twistRad most that two axles' turns may differ
   * @param ends whether ends are lifted, so that pitch and limits count
   * @param limits of the lifts
   */
  record Terms(double rollRad, double twistRad, boolean ends, Limits limits) {}

  /**
   * What is wanted.
   *
   * @param boundRad most roll that may remain
   * @param liftFromMm least by which the front axle's mean lift exceeds the rear's
   * @param liftToMm most by which it does
   */
  record Wish(double boundRad, double liftFromMm, double liftToMm) {}

  /**
   * Before anything is wanted.
   *
   * @param stance of the coach
   * @param axles what stands under each
   * @param terms of the search
   */
  Reach(Stance stance, AxleChoices[] axles, Terms terms) {
    this.stance = stance;
    tallestMm = new double[stance.axles];
    this.terms = terms;
    limits = terms.limits();
    fromRad = new double[stance.axles];
    toRad = new double[stance.axles];
    box = new Box(stance.axles);
    fromMm = box.fromMm;
    toMm = box.toMm;
    for (int k = 0; k < stance.axles; k++) {
      box.rightOnly[k] = !axles[k].both();
      tallestMm[k] = axles[k].tallestMm();
      toRad[k] = Math.atan(tallestMm[k] / stance.trackMm[k]);
      fromRad[k] = box.rightOnly[k] ? 0 : -toRad[k];
      fromMm[k] = 0;
      toMm[k] = tallestMm[k];
    }
  }

  /** Narrows everything; a later wish must not be wider than an earlier one. */
  void narrow(Wish wanted) {
    wish = wanted;
    double before;
    double after = size();
    int round = 0;
    do {
      before = after;
      for (int k = 0; k < stance.axles; k++) {
        fromRad[k] = Math.max(fromRad[k], leastTurnRad(k) - SLACK_RAD);
        toRad[k] = Math.min(toRad[k], mostTurnRad(k) + SLACK_RAD);
        stand(k);
      }
      if (terms.ends()) {
        pitch();
        limit();
      }
      after = size();
    } while (before - after > SAME && ++round < ROUNDS && !isEmpty());
    if (terms.ends() && !isEmpty()) {
      apart();
      limits = limits.within(box);
    }
  }

  /** Which axles are lifted at their right stations alone. */
  boolean[] rightOnly() {
    return box.rightOnly;
  }

  /** What of the limits makes a difference here. */
  Limits limits() {
    return limits;
  }

  /** Whether there can be no such plan. */
  boolean isEmpty() {
    for (int k = 0; k < stance.axles; k++) {
      if (fromRad[k] > toRad[k] || fromMm[k] > toMm[k]) {
        return true;
      }
    }
    return false;
  }

  private double size() {
    return Arrays.stream(toMm).sum()
        - Arrays.stream(fromMm).sum()
        + 1000 * (Arrays.stream(toRad).sum() - Arrays.stream(fromRad).sum());
  }

  /** The others turn no more than they may, and no more than this one and the twist. */
  private double leastTurnRad(int k) {
    double least = Double.NEGATIVE_INFINITY;
    for (int twisted = 0; twisted < 1 << stance.axles; twisted++) {
      double sum = terms.rollRad() - wish.boundRad();
      double share = stance.share[k];
      for (int j = 0; j < stance.axles; j++) {
        if (j != k && (twisted >> j & 1) == 0) {
          sum -= stance.share[j] * toRad[j];
        } else if (j != k) {
          sum -= stance.share[j] * terms.twistRad();
          share += stance.share[j];
        }
      }
      least = Math.max(least, sum / share);
    }
    for (int j = 0; j < stance.axles; j++) {
      least = Math.max(least, fromRad[j] - terms.twistRad());
    }
    return least;
  }

  private double mostTurnRad(int k) {
    double most = Double.POSITIVE_INFINITY;
    for (int twisted = 0; twisted < 1 << stance.axles; twisted++) {
      double sum = terms.rollRad() + wish.boundRad();
      double share = stance.share[k];
      for (int j = 0; j < stance.axles; j++) {
        if (j != k && (twisted >> j & 1) == 0) {
          sum -= stance.share[j] * fromRad[j];
        } else if (j != k) {
          sum += stance.share[j] * terms.twistRad();
          share += stance.share[j];
        }
      }
      most = Math.min(most, sum / share);
    }
    for (int j = 0; j < stance.axles; j++) {
      most = Math.min(most, toRad[j] + terms.twistRad());
    }
    return most;
  }

  /** Both stations stand between the ground and the tallest stack. */
  private void stand(int k) {
    double trackMm = stance.trackMm[k];
    double lowMm = trackMm * Math.tan(fromRad[k]);
    double highMm = trackMm * Math.tan(toRad[k]);
    double apartMm = Math.max(0, Math.max(lowMm, -highMm));
    double most = 2 * Math.min(toMm[k], tallestMm[k] - fromMm[k]) + SLACK_MM;
    if (!box.rightOnly[k]) {
      fromMm[k] = Math.max(fromMm[k], apartMm / 2 - SLACK_MM);
      toMm[k] = Math.min(toMm[k], tallestMm[k] - apartMm / 2 + SLACK_MM);
      fromRad[k] = Math.max(fromRad[k], -Math.atan(most / trackMm));
      toRad[k] = Math.min(toRad[k], Math.atan(most / trackMm));
    } else {
      fromMm[k] = Math.max(fromMm[k], lowMm / 2 - SLACK_MM);
      toMm[k] = Math.min(toMm[k], highMm / 2 + SLACK_MM);
      fromRad[k] = Math.max(fromRad[k], Math.atan((2 * fromMm[k] - SLACK_MM) / trackMm));
      toRad[k] = Math.min(toRad[k], Math.atan((2 * toMm[k] + SLACK_MM) / trackMm));
    }
  }

  private void pitch() {
    int last = stance.axles - 1;
    if (last > 0) {
      fromMm[0] = Math.max(fromMm[0], fromMm[last] + wish.liftFromMm() - SLACK_MM);
      toMm[0] = Math.min(toMm[0], toMm[last] + wish.liftToMm() + SLACK_MM);
      fromMm[last] = Math.max(fromMm[last], fromMm[0] - wish.liftToMm() - SLACK_MM);
      toMm[last] = Math.min(toMm[last], toMm[0] - wish.liftFromMm() + SLACK_MM);
    }
  }

  private void apart() {
    for (int k = 0; k < stance.axles; k++) {
      box.fromApartMm[k] = stance.trackMm[k] * Math.tan(fromRad[k]);
      box.toApartMm[k] = stance.trackMm[k] * Math.tan(toRad[k]);
    }
  }

  private void limit() {
    apart();
    for (int k = 0; k < stance.axles; k++) {
      Range meanMm = limits.meanMm(k, box);
      fromMm[k] = Math.max(fromMm[k], meanMm.from() - SLACK_MM);
      toMm[k] = Math.min(toMm[k], meanMm.to() + SLACK_MM);
      Range apartMm = limits.apartMm(k, box);
      fromRad[k] = Math.max(fromRad[k], Math.atan((apartMm.from() - SLACK_MM) / stance.trackMm[k]));
      toRad[k] = Math.min(toRad[k], Math.atan((apartMm.to() + SLACK_MM) / stance.trackMm[k]));
    }
  }
}
