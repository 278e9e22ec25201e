package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.MassText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * How far the jacks lift the body to take out a pitch, and what that does to tyres and jacks.
 *
 * <p>All pairs go to contact and a little further; then the low end rises by L·tan|pitch|, L the
 * distance between the outer pairs, those between them in proportion. A single pair turns the coach
 * about its farthest axle, and only helps if it stands at the low end.
 *
 * <p>A tyre unloads in proportion to the body's rise over its axle: nothing at rest, all at the
 * droop, where it leaves the ground. What tyres no longer carry the outer pairs do, by their
 * levers.
 */
final class Lifting {

  /** What a tyre keeps of its droop, so that it still carries something (our own figure). */
  private static final double SPARE_MM = 4;

  private final Coach coach;
  private final List<JackPair> pairs;

  Lifting(Coach coach) {
    this.coach = coach;
    this.pairs =
        coach.jackPairs().stream()
            .sorted(Comparator.comparingDouble(JackPair::positionMm).reversed())
            .toList();
  }

  /** Front to back. */
  List<JackPair> pairs() {
    return pairs;
  }

  /** How far each pair goes past contact, front to back; all 0 where jacks would not help. */
  double[] raisesMm(double pitchRad) {
    double[] raises = new double[pairs.size()];
    double contactMm = coach.levelling().contactMm();
    if (pairs.size() == 1) {
      double lowMm = armMm() * Math.tan(Math.abs(pitchRad));
      boolean helps = isFront() == pitchRad > 0 && lowMm >= contactMm;
      raises[0] = helps ? lowMm : 0;
      return raises;
    }
    double first = pairs.get(0).positionMm();
    double last = pairs.get(pairs.size() - 1).positionMm();
    double lowMm = (first - last) * Math.tan(Math.abs(pitchRad));
    for (int i = 0; i < raises.length; i++) {
      double towardsRear = (first - pairs.get(i).positionMm()) / (first - last);
      raises[i] = contactMm + lowMm * (pitchRad > 0 ? 1 - towardsRear : towardsRear);
    }
    return raises;
  }

  /**
   * What pitch is left: none, unless the pair at the high end comes free. Then the body lies on the
   * low pair and its springs alone.
   */
  double pitchAfterRad(double pitchRad) {
    double[] raises = raisesMm(pitchRad);
    if (pairs.size() == 1) {
      return raises[0] > 0 ? 0 : pitchRad;
    }
    double turned = Math.atan(slope(raises));
    return Math.abs(pitchRad - turned) < 1e-12 ? 0 : pitchRad - turned;
  }

  /**
   * Every limit that taking out a pitch would break, to be put into words when asked.
   *
   * @param unevenMm how much further the body is from one tyre of each axle than on the bare
   *     ground, because the axle stands otherwise than the body
   */
  List<Supplier<Reason>> objections(double pitchRad, double[] unevenMm) {
    double[] raises = asCarriedOut(raisesMm(pitchRad));
    List<Supplier<Reason>> objections = new ArrayList<>();
    for (int k = 0; k < unevenMm.length; k++) {
      Axle axle = coach.axles().get(k);
      double riseMm = riseMm(axle, raises) + unevenMm[k];
      if (riseMm > axle.droopMm() - SPARE_MM) {
        objections.add(() -> hangs(axle, riseMm));
      }
    }
    double[] loads = loadsKg(raises);
    for (int i = 0; i < loads.length; i++) {
      JackPair pair = pairs.get(i);
      double loadKg = loads[i];
      if (loadKg > pair.capacityKg()) {
        objections.add(() -> overloaded(pair, loadKg));
      }
    }
    return objections;
  }

  /**
   * What the raises come to when the front pair makes contact first: that lifts the body over the
   * pairs behind it a little before they meet it.
   */
  private double[] asCarriedOut(double[] raises) {
    double[] carriedOut = raises.clone();
    double contactMm = Math.min(coach.levelling().contactMm(), raises[0]);
    for (int i = 1; i < raises.length; i++) {
      double apartMm = pairs.get(i).positionMm() - pairs.get(0).positionMm();
      carriedOut[i] += Math.max(0, contactMm + freeSlope(0, contactMm) * apartMm);
    }
    return carriedOut;
  }

  /** The body's rise over an axle, linear between the outer pairs and beyond. */
  private double riseMm(Axle axle, double[] raises) {
    if (pairs.size() == 1) {
      double pivot = pivot().positionMm();
      double lever = (axle.positionMm() - pivot) / (pairs.get(0).positionMm() - pivot);
      return raises[0] * lever;
    }
    int low = low(raises);
    return raises[low] + slope(raises) * (axle.positionMm() - pairs.get(low).positionMm());
  }

  /** Which of the outer pairs goes further. */
  private static int low(double[] raises) {
    return raises[0] > raises[raises.length - 1] ? 0 : raises.length - 1;
  }

  /** How much more the body rises towards the front, millimetres per millimetre. */
  private double slope(double[] raises) {
    int last = raises.length - 1;
    double apartMm = pairs.get(0).positionMm() - pairs.get(last).positionMm();
    double planned = (raises[0] - raises[last]) / apartMm;
    double free = freeSlope(low(raises), raises[low(raises)]);
    return low(raises) == 0 ? Math.min(planned, free) : Math.max(planned, free);
  }

  /** The slope of a body that lies on one pair and its springs: their moments about it cancel. */
  private double freeSlope(int pair, double raiseMm) {
    double first = 0;
    double second = 0;
    for (Axle axle : coach.axles()) {
      double armMm = axle.positionMm() - pairs.get(pair).positionMm();
      first += axle.unloadsKgPerMm() * armMm;
      second += axle.unloadsKgPerMm() * armMm * armMm;
    }
    return -raiseMm * first / second;
  }

  /** What each jack of the outer pairs carries. */
  private double[] loadsKg(double[] raises) {
    double[] loads = new double[pairs.size()];
    JackPair first = pairs.get(0);
    JackPair last = pairs.get(pairs.size() - 1);
    double lever = first.positionMm() - last.positionMm();
    for (Axle axle : coach.axles()) {
      double riseMm = Math.max(0, riseMm(axle, raises));
      double offKg = Math.min(axle.loadKg(), axle.unloadsKgPerMm() * riseMm) / 2;
      if (pairs.size() == 1) {
        double pivot = pivot().positionMm();
        loads[0] += offKg * (axle.positionMm() - pivot) / (first.positionMm() - pivot);
      } else {
        loads[0] += offKg * (axle.positionMm() - last.positionMm()) / lever;
        loads[loads.length - 1] += offKg * (first.positionMm() - axle.positionMm()) / lever;
      }
    }
    return loads;
  }

  private boolean isFront() {
    return pairs.get(0).positionMm() > pivot().positionMm();
  }

  private double armMm() {
    return Math.abs(pairs.get(0).positionMm() - pivot().positionMm());
  }

  /** The axle that is farthest from a single pair. */
  private Axle pivot() {
    double xMm = pairs.get(0).positionMm();
    return coach.axles().stream()
        .max(Comparator.comparingDouble(axle -> Math.abs(axle.positionMm() - xMm)))
        .orElseThrow();
  }

  private Reason hangs(Axle axle, double riseMm) {
    String text =
        String.format(
            Locale.ROOT,
            "the jacks would lift the body %s over axle %s, whose tyres leave the ground at %s: too near or past it%s",
            LengthText.of(riseMm, coach.units()),
            axle.id(),
            LengthText.of(axle.droopMm(), coach.units()),
            axle.parkingBrake() ? "; it holds the parking brake" : "");
    return new Reason("droop", text);
  }

  private Reason overloaded(JackPair pair, double loadKg) {
    String text =
        String.format(
            Locale.ROOT,
            "each jack of pair %s would carry %s, its rated load is %s",
            pair.id(),
            MassText.of(loadKg, coach.units()),
            MassText.of(pair.capacityKg(), coach.units()));
    return new Reason("jack-load", text);
  }
}
