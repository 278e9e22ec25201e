package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.levelling.Choices.Range;
import io.pitchwatch.levelling.Pads.Foot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Plans the jacks once it is known what lies under the wheels. */
final class JackPlanner {

  /**
   * What jack and frame give under load, and so comes on top of a planned travel (our own figure).
   */
  static final double GIVES_MM = 12;

  private final Coach coach;
  private final Lifting lifting;
  private final List<Pad> stock;
  private final Pads pads;

  JackPlanner(Coach coach) {
    this.coach = coach;
    this.lifting = new Lifting(coach);
    this.stock = PadStock.of(coach);
    this.pads = new Pads(stock);
  }

  /** The moves that follow a wheel plan. */
  JackOutcome plan(WheelPlan wheels) {
    Lean lean = wheels.after();
    WheelLifts lifts = WheelLifts.of(coach, wheels.wheels());
    double[] raises = lifting.raisesMm(lean.pitchRad());
    if (stayUp(raises)) {
      return new JackOutcome.Planned(List.of(), lean, List.of());
    }
    List<Supplier<Reason>> objections = lifting.objections(lean.pitchRad(), lifts.unevenMm());
    List<Foot> feet = feet(lifts, raises);
    List<int[]> piles = pads.share(feet);
    List<JackMove> moves = new ArrayList<>();
    for (int i = 0; i < raises.length; i++) {
      moves.add(move(i, raises[i], feet, piles));
    }
    for (int i = 0; i < moves.size(); i++) {
      Sides padMm = moves.get(i).padMm();
      if (feet.get(2 * i).isPastStroke(padMm.left())
          || feet.get(2 * i + 1).isPastStroke(padMm.right())) {
        JackMove move = moves.get(i);
        objections.add(() -> overStroke(lifting.pairs().get(move.order() - 1), move));
      }
    }
    if (!objections.isEmpty()) {
      return new JackOutcome.Refused(objections.stream().map(Supplier::get).toList());
    }
    Lean after = new Lean(lean.rollRad(), lifting.pitchAfterRad(lean.pitchRad()));
    return new JackOutcome.Planned(moves, after, remarks(moves));
  }

  /**
   * Whether there are moves that break no limit.
   *
   * @param lifts of the wheels
   * @param pitchRad with the wheels on them
   */
  boolean takes(WheelLifts lifts, double pitchRad) {
    double[] raises = lifting.raisesMm(pitchRad);
    return stayUp(raises)
        || (lifting.objections(pitchRad, lifts.unevenMm()).isEmpty()
            && pads.suffice(feet(lifts, raises)));
  }

  /** Whether a single pair would not help, and so stays up. */
  private static boolean stayUp(double[] raises) {
    return raises.length == 1 && raises[0] == 0;
  }

  /**
   * What strokes limit of the lifts, beside what else does.
   *
   * @param others limits
   * @param pitchRad on the bare ground
   * @param groundMm thickness of what lies under every tyre
   */
  Limits limits(List<Limit> others, double pitchRad, double groundMm) {
    Strokes strokes = new Strokes(coach, lifting.pairs(), pitchRad, groundMm);
    List<Limit> limits = strokes.raises();
    limits.addAll(others);
    return new Limits(limits, strokes.piles(stock));
  }

  /**
   * What pitch the wheels may leave so that no tyre hangs and no jack is overloaded.
   *
   * @param mostRad pitch beyond which nothing is asked
   * @param nearerMm how much nearer to each axle the body may be than on the bare ground
   * @return a range around level; from above to if even level is too much
   */
  Range allowedRad(double mostRad, double[] nearerMm) {
    double[] unevenMm = Arrays.stream(nearerMm).map(mm -> -mm).toArray();
    if (!lifting.objections(0, unevenMm).isEmpty()) {
      return new Range(1, -1);
    }
    return new Range(-mostAllowedRad(-mostRad, unevenMm), mostAllowedRad(mostRad, unevenMm));
  }

  private double mostAllowedRad(double towardsRad, double[] unevenMm) {
    double allowed = 0;
    double refused = 1;
    if (lifting.objections(towardsRad, unevenMm).isEmpty()) {
      return Math.abs(towardsRad);
    }
    // The body's rise over every axle is a straight line in tan|pitch|.
    for (int i = 0; i < 40; i++) {
      double middle = (allowed + refused) / 2;
      if (lifting.objections(middle * towardsRad, unevenMm).isEmpty()) {
        allowed = middle;
      } else {
        refused = middle;
      }
    }
    return allowed * Math.abs(towardsRad);
  }

  private List<Foot> feet(WheelLifts lifts, double[] raises) {
    List<Foot> feet = new ArrayList<>();
    for (int i = 0; i < raises.length; i++) {
      JackPair pair = lifting.pairs().get(i);
      Sides gap = lifts.gapMm(pair);
      Sides besides = lifts.besidesMm(pair);
      feet.add(foot(pair, gap.left(), raises[i], besides.left()));
      feet.add(foot(pair, gap.right(), raises[i], besides.right()));
    }
    return feet;
  }

  private static Foot foot(JackPair pair, double gapMm, double raiseMm, double besidesMm) {
    double strokeMm = pair.strokeMm() - GIVES_MM - besidesMm;
    return new Foot(gapMm, raiseMm, strokeMm, pair.keepUnderMm(), pair.footMm());
  }

  private JackMove move(int i, double raiseMm, List<Foot> feet, List<int[]> piles) {
    int[] left = piles.get(2 * i);
    int[] right = piles.get(2 * i + 1);
    Sides padMm = new Sides(pads.heightMm(left), pads.heightMm(right));
    Sides travelMm =
        new Sides(
            feet.get(2 * i).travelMm(padMm.left()), feet.get(2 * i + 1).travelMm(padMm.right()));
    String id = lifting.pairs().get(i).id();
    return new JackMove(id, i + 1, raiseMm, padMm, travelMm, piles(left), piles(right));
  }

  private List<PadPile> piles(int[] counts) {
    List<PadPile> piles = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        piles.add(new PadPile(coach.pads().get(i).id(), counts[i]));
      }
    }
    return piles;
  }

  private List<Reason> remarks(List<JackMove> moves) {
    List<Reason> remarks = new ArrayList<>();
    for (JackMove move : moves) {
      JackPair pair = lifting.pairs().get(move.order() - 1);
      if (move.travelMm().most() > pair.keepUnderMm() + 1e-6) {
        remarks.add(
            new Reason(
                "travel",
                String.format(
                    Locale.ROOT,
                    "pair %s travels %s, more than the %s you want to stay under: the pads on board"
                        + " allow no less",
                    pair.id(),
                    LengthText.of(move.travelMm().most(), coach.units()),
                    LengthText.of(pair.keepUnderMm(), coach.units()))));
      }
    }
    for (Pad pad : coach.pads()) {
      double least = Math.min(pad.lengthMm(), pad.widthMm());
      if (lifting.pairs().stream().anyMatch(pair -> pair.footMm() > least)) {
        remarks.add(
            new Reason(
                "small-pad", "pad " + pad.id() + " is smaller than a foot and left out there"));
      }
    }
    return remarks;
  }

  private Reason overStroke(JackPair pair, JackMove move) {
    return new Reason(
        "stroke",
        String.format(
            Locale.ROOT,
            "pair %s would have to run out %s, too near to its stroke of %s or past it",
            pair.id(),
            LengthText.of(move.travelMm().most(), coach.units()),
            LengthText.of(pair.strokeMm(), coach.units())));
  }
}
