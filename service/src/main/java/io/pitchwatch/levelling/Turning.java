package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.AngleText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What turning the coach on the same slope would bring.
 *
 * <p>On a plane the coach turns about its own vertical axis, so the up vector seen from it turns
 * the other way: u' = (cos ψ·u_x + sin ψ·u_y, −sin ψ·u_x + cos ψ·u_y, u_z), ψ to the left. Seen
 * along the fall line that is the apparent dip of structural geology: tan(pitch) = tan β·cos γ with
 * γ measured on the map.
 */
public final class Turning {

  /** Between two headings, degrees. */
  public static final int STEP_DEG = 5;

  private static final int BEST = 3;

  /** Headings nearer to each other than this are one piece of advice, degrees. */
  private static final int APART_DEG = 30;

  private Turning() {}

  /**
   * One heading.
   *
   * @param turnDeg how far to turn to the left from where the coach stands; −175 to 180
   * @param lean that the floor would have there, radians
   * @param verdict of the plan for it
   * @param pieces that plan lays
   * @param raiseMm most that it raises a pair of jacks past contact, millimetres; 0 without jacks
   * @param outsideRad how far the floor stays outside the tolerance, radians; 0 inside, or without
   *     a plan
   * @param text one sentence for people
   */
  public record Heading(
      int turnDeg,
      Lean lean,
      PlanVerdict verdict,
      int pieces,
      double raiseMm,
      double outsideRad,
      String text) {}

  /**
   * All headings.
   *
   * @param site where the coach stands now
   * @param slopeRad of the ground, 0 or more
   * @param all from −175 to 180 degrees
   * @param best the best few with a plan, best first, at least 30 degrees apart; of level ground
   *     one, for there all are the same
   */
  public record Headings(Site site, double slopeRad, List<Heading> all, List<Heading> best) {

    /** Copies the lists. */
    public Headings {
      all = List.copyOf(all);
      best = List.copyOf(best);
    }

    /** One sentence for people: the best heading, or that there is none. */
    public String headline() {
      return best.isEmpty()
          ? "no heading on this slope has a safe plan: look for another spot"
          : best.get(0).text();
    }
  }

  /** The lean after a turn to the left on the same slope. */
  public static Lean turned(Lean lean, double leftRad) {
    UpVector up = UpVector.of(lean);
    double cos = Math.cos(leftRad);
    double sin = Math.sin(leftRad);
    return new UpVector(cos * up.x() + sin * up.y(), cos * up.y() - sin * up.x(), up.z()).lean();
  }

  /** Headings all around the circle, each with the plan it needs. */
  public static Headings around(Site site) {
    List<Heading> all = new ArrayList<>();
    for (int deg = -180 + STEP_DEG; deg <= 180; deg += STEP_DEG) {
      all.add(heading(site, deg));
    }
    double slopeRad = UpVector.of(site.lean()).totalRad();
    List<Heading> best = new ArrayList<>();
    List<Heading> sorted =
        all.stream()
            .filter(heading -> heading.verdict() != PlanVerdict.MOVE)
            .sorted(
                Comparator.comparing(Heading::verdict)
                    .thenComparingLong(h -> Excess.hundredths(h.outsideRad(), 0))
                    .thenComparingInt(Heading::pieces)
                    .thenComparingDouble(h -> Math.rint(h.raiseMm()))
                    .thenComparingInt(h -> Math.abs(h.turnDeg()))
                    .thenComparingInt(Heading::turnDeg))
            .toList();
    for (Heading heading : sorted) {
      if (best.size() < (isLevel(slopeRad) ? 1 : BEST)
          && best.stream().allMatch(b -> apart(b, heading) >= APART_DEG)) {
        best.add(heading);
      }
    }
    return new Headings(site, slopeRad, all, best);
  }

  private static int apart(Heading a, Heading b) {
    int apart = Math.abs(a.turnDeg() - b.turnDeg());
    return Math.min(apart, 360 - apart);
  }

  private static Heading heading(Site site, int deg) {
    Lean lean = turned(site.lean(), Math.toRadians(deg));
    if (!Site.isPlannable(lean.largestRad())) {
      // Both angles of a slope that can be planned for may come together in one that cannot.
      String text = words(deg, lean) + "no safe plan";
      return new Heading(deg, lean, PlanVerdict.MOVE, 0, 0, 0, text);
    }
    Plan plan = LevelPlanner.planOnly(site.with(lean));
    double raiseMm = plan.jacks().stream().mapToDouble(JackMove::raiseMm).max().orElse(0);
    double outsideRad = Math.max(0, plan.after().largestRad() - site.toleranceRad());
    String text = words(deg, lean) + words(plan, outsideRad);
    return new Heading(
        deg, lean, plan.verdict(), plan.wheels().pieces(), raiseMm, outsideRad, text);
  }

  private static String words(int deg, Lean lean) {
    String turn =
        deg == 0
            ? "stay as it stands, "
            : deg == 180
                ? "turn right round, until "
                : "turn about "
                    + Math.abs(deg)
                    + " deg to the "
                    + (deg > 0 ? "left" : "right")
                    + ", until ";
    return turn + nose(lean) + ": ";
  }

  private static String words(Plan plan, double outsideRad) {
    String toLay = pieces(plan.wheels().pieces()) + " to lay";
    return switch (plan.verdict()) {
      case GOOD -> toLay;
      case BEST_POSSIBLE ->
          toLay + ", and still " + AngleText.of(outsideRad, 2) + " outside the tolerance";
      case MOVE -> "no safe plan";
    };
  }

  private static String pieces(int pieces) {
    return switch (pieces) {
      case 0 -> "nothing";
      case 1 -> "1 piece";
      default -> pieces + " pieces";
    };
  }

  private static boolean isLevel(double slopeRad) {
    return Math.toDegrees(slopeRad) < 0.05;
  }

  /** Where the nose points on the slope. */
  static String nose(Lean lean) {
    UpVector up = UpVector.of(lean);
    double slopeRad = up.totalRad();
    if (isLevel(slopeRad)) {
      return "the ground is level";
    }
    // Seen from a nose that points down, up leans backwards: downhill is where up does not lean.
    double fallDeg = Math.toDegrees(Math.atan2(0 - up.y(), 0 - up.x()));
    String slope = " the " + AngleText.of(slopeRad, 1) + " slope";
    if (Math.abs(fallDeg) <= 22.5) {
      return "the nose points down" + slope;
    }
    if (Math.abs(fallDeg) >= 157.5) {
      return "the nose points up" + slope;
    }
    String side = fallDeg > 0 ? "left" : "right";
    if (Math.abs(fallDeg) < 67.5) {
      return "the nose points down" + slope + ", its foot ahead to the " + side;
    }
    if (Math.abs(fallDeg) > 112.5) {
      return "the nose points up" + slope + ", its foot behind to the " + side;
    }
    return "the coach stands across" + slope + ", its foot to the " + side;
  }
}
