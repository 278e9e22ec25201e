package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.LengthText;

/** What the driver does now, one sentence, while a plan is carried out. */
public final class NextStep {

  /** Nearer than this is there: less than any piece makes (our own figure). */
  private static final double THERE_RAD = Math.toRadians(0.1);

  private final Plan plan;
  private final Coach coach;
  private final Lean goal;
  private final Standing standing;

  private NextStep(Plan plan, Lean goal, Standing standing) {
    this.plan = plan;
    this.coach = plan.site().coach();
    this.goal = goal;
    this.standing = standing;
  }

  /**
   * How the coach stands while the plan is carried out.
   *
   * @param lean as it is read now, radians
   * @param errorRad its standard error, without what it shares with the lean that was planned for;
   *     NaN while it moves
   * @param laid whether pieces lie under the wheels, or ready in front of them
   * @param wasUp whether it stood on them at the reading before
   */
  public record Standing(Lean lean, double errorRad, boolean laid, boolean wasUp) {}

  /**
   * The sentence.
   *
   * @param plan for the bare ground
   * @param goal how the floor leans once all wheels stand on what is laid, radians
   * @param standing how it stands now
   */
  public static String of(Plan plan, Lean goal, Standing standing) {
    return new NextStep(plan, goal, standing).text();
  }

  /**
   * Whether the wheels stand on what is laid. Whoever was told so is not sent on again by the
   * reading's noise: it takes twice the distance from there to count as to go.
   */
  public static boolean isUp(Plan plan, Lean goal, Standing standing) {
    return new NextStep(plan, goal, standing).isUp();
  }

  private boolean isUp() {
    return standing.laid()
        && reached(standing.lean().rollRad(), goal.rollRad(), plan.site().lean().rollRad());
  }

  private String text() {
    if (plan.verdict() == PlanVerdict.MOVE) {
      return "Do not level here; see what would change that";
    }
    if (plan.wheels().wheels().isEmpty()
        && plan.jacks().isEmpty()
        && plan.verdict() == PlanVerdict.BEST_POSSIBLE) {
      return "Nothing on board helps here; see what would";
    }
    boolean toLay = !plan.wheels().wheels().isEmpty();
    if (toLay && !standing.laid()) {
      return "Lay the pieces in front of the wheels, say that they are laid, then drive on";
    }
    if (standing.laid() && !isUp()) {
      return climbing(
          standing.lean().rollRad() - goal.rollRad(),
          plan.site().lean().rollRad() - goal.rollRad(),
          "right side",
          "left side",
          trackMm());
    }
    String up = standing.laid() ? "Stop, you are up. " : "";
    return up + (plan.jacks().isEmpty() ? ends() : jacks());
  }

  /** Short of the goal one has to be near it; past it a floor that is level enough will do. */
  private boolean reached(double rad, double goalRad, double startRad) {
    boolean past = rad > goalRad != startRad > goalRad;
    return near(rad, goalRad)
        || (past && Math.abs(rad) <= plan.site().toleranceRad())
        || (standing.wasUp() && Math.abs(rad - goalRad) <= 2 * THERE_RAD);
  }

  private boolean near(double rad, double goalRad) {
    double error = Double.isNaN(standing.errorRad()) ? 0 : 2 * standing.errorRad();
    return Math.abs(rad - goalRad) <= Math.max(THERE_RAD, error);
  }

  /** Whether the jacks of a plan have nothing to raise, and so only steady the coach. */
  static boolean jacksOnlySteady(Plan plan) {
    double leftRad = plan.wheels().after().pitchRad() - plan.after().pitchRad();
    return Math.abs(leftRad) <= THERE_RAD;
  }

  /** What is left of a climb, or how far it went past what was planned. */
  private String climbing(
      double leftRad, double wholeRad, String positive, String negative, double baseMm) {
    String side = wholeRad > 0 ? positive : negative;
    String mm = LengthText.of(baseMm * Math.tan(Math.abs(leftRad)), coach.units());
    if (leftRad > 0 != wholeRad > 0) {
      return capital(side) + " " + mm + " higher than planned: look at what the wheels stand on";
    }
    boolean atTheFoot = near(leftRad, wholeRad);
    return atTheFoot
        ? "Drive on: " + mm + " to go on the " + side
        : capital(side) + ": " + mm + " to go";
  }

  private String ends() {
    if (coach.axles().size() > 1
        && standing.laid()
        && !reached(standing.lean().pitchRad(), goal.pitchRad(), plan.site().lean().pitchRad())) {
      return climbing(
          standing.lean().pitchRad() - goal.pitchRad(),
          plan.site().lean().pitchRad() - goal.pitchRad(),
          "front",
          "rear",
          wheelbaseMm());
    }
    return "Nothing more to do";
  }

  private String jacks() {
    double pitch = standing.lean().pitchRad();
    if (near(pitch, plan.after().pitchRad())) {
      return "Nothing more to do: the floor is as planned";
    }
    JackPair front = coach.jackPairs().get(0);
    JackPair rear = coach.jackPairs().get(coach.jackPairs().size() - 1);
    double armMm = Math.abs(front.positionMm() - rear.positionMm());
    JackPair low = pitch > 0 ? front : rear;
    if (armMm == 0) {
      return "Next the jacks: " + low.id() + " pair, until the floor is level";
    }
    String mm = LengthText.of(armMm * Math.tan(Math.abs(pitch)), coach.units());
    return "Next the jacks: " + mm + " to go on the " + low.id() + " pair";
  }

  /** The track over which a lift of all wheels of one side turns the body as the axles' do. */
  private double trackMm() {
    double whole = coach.axles().stream().mapToDouble(Axle::stiffness).sum();
    return whole / coach.axles().stream().mapToDouble(a -> a.stiffness() / a.trackMm()).sum();
  }

  private double wheelbaseMm() {
    return coach.axles().get(0).positionMm()
        - coach.axles().get(coach.axles().size() - 1).positionMm();
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
