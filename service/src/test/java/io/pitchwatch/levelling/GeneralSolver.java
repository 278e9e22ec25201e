package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/**
 * The contract of docs/levelling.md as a model for a general constraint solver. Heights in
 * twentieths of a millimetre, angles in 1e-8 rad; the arctangents are tables. A layer in the n-th
 * flight from the top is used n times.
 */
final class GeneralSolver {

  private static final double PER_MM = 20;
  private static final double PER_RAD = 1e8;
  private static final int MOST_EXCESS = 3000;

  private final Site site;
  private final Coach coach;
  private final boolean ends;
  private final int barrier;
  private final Model model = new Model();
  private final List<List<IntVar>> taken = new ArrayList<>();
  private final List<IntVar> counts = new ArrayList<>();
  private final int[] onBoard;
  private final IntVar excess;
  private final IntVar pieces;
  private final IntVar lean;
  private final IntVar tallest;

  /** How good the best plan is, in the order of preference. */
  record Best(long excessHundredths, int pieces, double leanRad, double tallestMm) {

    /** Whether a plan is as good, up to the rounding of the model; ends as in the model. */
    boolean isMatchedBy(WheelPlan plan, boolean ends) {
      double lean = WheelsAlone.leanRad(plan, ends);
      // The model rounds each arctangent to 1e-8 rad.
      return excessHundredths == plan.excessHundredths()
          && pieces == plan.pieces()
          && Math.abs(leanRad - lean) <= 3e-8
          && (Math.abs(leanRad - lean) >= 1e-9
              || PlanInspection.tallestMm(plan) <= tallestMm + 0.01);
    }
  }

  /**
   * A site as a model.
   *
   * @param site planned for
   * @param ends whether ends are levelled as well as sides
   */
  GeneralSolver(Site site, boolean ends) {
    this.site = site;
    this.coach = site.coach();
    this.ends = ends;
    this.barrier = Barrier.piece(site);
    this.onBoard = coach.pieces().stream().mapToInt(Piece::count).toArray();
    coach.pieces().forEach(piece -> taken.add(new ArrayList<>()));
    counts.add(model.intVar(0));
    int fixed = 0;
    int axles = coach.axles().size();
    IntVar[] right = new IntVar[axles];
    IntVar[] left = new IntVar[axles];
    for (int k = 0; k < axles; k++) {
      right[k] = station(coach.axles().get(k));
      left[k] = ends ? station(coach.axles().get(k)) : model.intVar(groundUnits());
      if (!ends && barrier != Barrier.NONE) {
        int abreast = Kind.abreast(coach.pieces().get(barrier), coach.axles().get(k));
        onBoard[barrier] -= abreast;
        fixed += abreast;
      }
    }
    pieces = inventory(fixed);
    lean = lean(right, left);
    excess = excess();
    tallest = model.intVar("tallest", 0, units(coach.levelling().stackMm()));
    List<IntVar> all = new ArrayList<>(List.of(right));
    all.addAll(List.of(left));
    model.max(tallest, all.toArray(new IntVar[0])).post();
  }

  /** The best plan, or empty if the solver could not prove one within the time. */
  Optional<Best> solve(double seconds) {
    long until = System.nanoTime() + (long) (seconds * 1e9);
    for (IntVar goal : new IntVar[] {excess, pieces, lean, tallest}) {
      Optional<Integer> least = minimise(goal, until);
      if (least.isEmpty()) {
        return Optional.empty();
      }
      model.arithm(goal, "=", least.orElseThrow()).post();
    }
    model.getSolver().reset();
    model.getSolver().solve();
    return Optional.of(
        new Best(
            excess.getValue(),
            pieces.getValue(),
            lean.getValue() / PER_RAD,
            tallest.getValue() / PER_MM));
  }

  private Optional<Integer> minimise(IntVar goal, long until) {
    Solver solver = model.getSolver();
    solver.reset();
    solver.limitTime(Math.max(1, (until - System.nanoTime()) / 1_000_000) + "ms");
    solver.setSearch(
        Search.domOverWDegSearch(counts.toArray(new IntVar[0])), Search.inputOrderLBSearch(excess));
    model.setObjective(Model.MINIMIZE, goal);
    Optional<Integer> least = Optional.empty();
    while (solver.solve()) {
      least = Optional.of(goal.getValue());
    }
    boolean proven = !solver.isStopCriterionMet();
    solver.removeAllStopCriteria();
    model.clearObjective();
    return proven ? least : Optional.empty();
  }

  private static int units(double mm) {
    return (int) Math.round(mm * PER_MM);
  }

  private int groundUnits() {
    return barrier == Barrier.NONE ? 0 : units(coach.pieces().get(barrier).thicknessMm());
  }

  private boolean mayBeLowest(int piece) {
    PieceKind kind = coach.pieces().get(piece).kind();
    if (barrier != Barrier.NONE) {
      return piece == barrier;
    }
    return switch (site.surface()) {
      case SOFT, GRASS -> kind != PieceKind.BLOCK;
      case GRAVEL -> kind != PieceKind.SHEET;
      case CONCRETE, ASPHALT -> true;
    };
  }

  /** Height of what stands under one station. */
  private IntVar station(Axle axle) {
    int step = units(Math.min(coach.levelling().stepMm(), coach.levelling().stackMm()));
    int most = 0;
    for (int total = 0; total + most + 1 <= 40; most++) {
      total += most + 1;
    }
    IntVar[] flights = new IntVar[most + 1];
    IntVar[] onGround = new IntVar[most];
    flights[most] = model.intVar(0);
    for (int n = 0; n < most; n++) {
      flights[n] = model.intVar(0, step);
      onGround[n] = flight(axle, n + 1, flights[n]);
    }
    for (int n = 0; n < most; n++) {
      flights[n + 1].eq(0).or(flights[n].gt(0)).post();
      flights[n].eq(0).or(flights[n + 1].gt(0)).or(onGround[n].gt(0)).post();
    }
    if (barrier != Barrier.NONE) {
      model.arithm(flights[0], ">", 0).post();
    }
    IntVar height = model.intVar(0, units(coach.levelling().stackMm()));
    model.sum(flights, "=", height).post();
    return height;
  }

  /** The layers of a flight that is used so many times over; how many may lie on the ground. */
  private IntVar flight(Axle axle, int times, IntVar height) {
    List<IntVar> layers = new ArrayList<>();
    List<Integer> thickness = new ArrayList<>();
    List<IntVar> lowest = new ArrayList<>();
    for (int i = 0; i < coach.pieces().size(); i++) {
      Piece piece = coach.pieces().get(i);
      int each = times * Kind.abreast(piece, axle);
      int units = units(piece.thicknessMm());
      int most = Math.min(piece.count() / each, height.getUB() / units);
      if (most > 0 && Kind.carries(piece, axle)) {
        IntVar count = model.intVar(0, most);
        layers.add(count);
        counts.add(count);
        thickness.add(units);
        taken.get(i).add(model.intView(each, count, 0));
        if (mayBeLowest(i)) {
          lowest.add(count);
        }
      }
    }
    int[] coefficients = thickness.stream().mapToInt(Integer::intValue).toArray();
    model.scalar(layers.toArray(new IntVar[0]), coefficients, "=", height).post();
    IntVar onGround = model.intVar(0, 10_000);
    model.sum(lowest.toArray(new IntVar[0]), "=", onGround).post();
    return onGround;
  }

  private IntVar inventory(int fixed) {
    List<IntVar> all = new ArrayList<>();
    for (int i = 0; i < onBoard.length; i++) {
      IntVar used = model.intVar(0, Math.max(0, onBoard[i]));
      model.sum(taken.get(i).toArray(new IntVar[0]), "=", used).post();
      all.add(used);
    }
    IntVar sum = model.intVar("pieces", 0, 100_000);
    all.add(model.intVar(fixed));
    model.sum(all.toArray(new IntVar[0]), "=", sum).post();
    return sum;
  }

  /** A rising function of a difference of heights, as a table. */
  private IntVar table(IntVar argument, IntToDoubleFunction rad) {
    int[] values = new int[argument.getUB() - argument.getLB() + 1];
    for (int i = 0; i < values.length; i++) {
      values[i] = (int) Math.round(rad.applyAsDouble(argument.getLB() + i) * PER_RAD);
    }
    IntVar value = model.intVar(values[0], values[values.length - 1], true);
    model.post(
        new Constraint(
            "arctangent", new IncreasingTable(value, argument, values, argument.getLB())));
    return value;
  }

  private IntVar lean(IntVar[] right, IntVar[] left) {
    int axles = right.length;
    double stiffness = coach.axles().stream().mapToDouble(Axle::stiffness).sum();
    boolean mirrored = site.lean().rollRad() < 0;
    IntVar[] rolls = new IntVar[axles + 1];
    IntVar[] turns = new IntVar[axles];
    int[] signs = new int[axles + 1];
    int stack = units(coach.levelling().stackMm());
    for (int k = 0; k < axles; k++) {
      Axle axle = coach.axles().get(k);
      IntVar lift = model.intVar(ends ? -stack : 0, stack);
      model.arithm(right[k], "-", left[k], "=", lift).post();
      double share = axle.stiffness() / stiffness;
      rolls[k] = table(lift, h -> share * Math.atan(h / PER_MM / axle.trackMm()));
      turns[k] = table(lift, h -> Math.atan(h / PER_MM / axle.trackMm()));
      signs[k] = -1;
    }
    twist(turns);
    double rollRad = mirrored ? -site.lean().rollRad() : site.lean().rollRad();
    rolls[axles] = model.intVar((int) Math.round(rollRad * PER_RAD));
    signs[axles] = 1;
    int most = (int) PER_RAD;
    IntVar roll = model.intVar(-most, most, true);
    model.scalar(rolls, signs, "=", roll).post();
    IntVar absRoll = model.intVar(0, most, true);
    model.absolute(absRoll, roll).post();
    if (!ends) {
      return absRoll;
    }
    IntVar larger = model.intVar(0, most, true);
    model.max(larger, absRoll, absPitch(right, left)).post();
    return larger;
  }

  private void twist(IntVar[] turns) {
    int twist = (int) Math.round(coach.levelling().twistRad() * PER_RAD);
    for (int j = 0; j < turns.length; j++) {
      for (int k = 0; k < j; k++) {
        turns[j].sub(turns[k]).abs().le(twist).post();
      }
    }
  }

  private IntVar absPitch(IntVar[] right, IntVar[] left) {
    int last = right.length - 1;
    double baseMm = coach.axles().get(0).positionMm() - coach.axles().get(last).positionMm();
    int most = 2 * units(coach.levelling().stackMm());
    IntVar twice = model.intVar(-most, most, true);
    model
        .scalar(
            new IntVar[] {right[0], left[0], right[last], left[last]},
            new int[] {1, 1, -1, -1},
            "=",
            twice)
        .post();
    IntVar turn = table(twice, sum -> Math.atan(sum / 2.0 / PER_MM / baseMm));
    int pitch = (int) Math.round(site.lean().pitchRad() * PER_RAD);
    IntVar size = model.intVar(0, (int) PER_RAD, true);
    model.absolute(size, model.intView(-1, turn, pitch)).post();
    if (right.length == 3) {
      hang(right, left);
    }
    return size;
  }

  /** The body above the middle axle rises no more than its droop above the wheels there. */
  private void hang(IntVar[] right, IntVar[] left) {
    Axle middle = coach.axles().get(1);
    // Positions are whole millimetres, so all of it is whole numbers.
    int base = (int) (coach.axles().get(0).positionMm() - coach.axles().get(2).positionMm());
    int ofFront = (int) (middle.positionMm() - coach.axles().get(2).positionMm());
    int ofRear = base - ofFront;
    int droop = 2 * units(middle.droopMm()) * base;
    model
        .scalar(
            new IntVar[] {right[0], left[0], right[2], left[2], right[1], left[1]},
            new int[] {ofFront, ofFront, ofRear, ofRear, -base, -base},
            "<=",
            droop)
        .post();
  }

  private IntVar excess() {
    IntVar hundredths = model.intVar("excess", 0, MOST_EXCESS);
    double toleranceRad = site.toleranceRad();
    int[] bounds = new int[MOST_EXCESS + 1];
    for (int e = 0; e <= MOST_EXCESS; e++) {
      double boundRad = toleranceRad + Math.toRadians((e + 0.5) / 100);
      bounds[e] = (int) Math.ceil(boundRad * PER_RAD) - 1;
    }
    IntVar bound = model.intVar(0, bounds[MOST_EXCESS], true);
    model.element(bound, bounds, hundredths, 0).post();
    model.arithm(lean, "<=", bound).post();
    return hundredths;
  }
}
