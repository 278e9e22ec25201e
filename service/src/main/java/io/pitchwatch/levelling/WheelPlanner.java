package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.levelling.Choices.Choice;
import io.pitchwatch.levelling.Choices.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Plans what goes under the wheels of one coach at one site: the best there is by the order of
 * preference in docs/levelling.md, proven by the search.
 */
final class WheelPlanner {

  /** What the blocks are to do. */
  enum Task {
    /** Lift the low side; the ends are left to the jacks. */
    SIDES,
    /** Lift the low side, and the low end as far as the jacks need it. */
    SIDES_AND_LOW_END,
    /** Level side to side and front to back. */
    ALL
  }

  /**
   * How far the springs of three axles may pitch the body from what the outer ones say where jacks
   * are to take the rest (our own figure: alike stacks of 100 mm under a drive and a tag axle).
   */
  private static final double SHARED_RAD = Math.toRadians(0.075);

  private final Site site;
  private final Coach coach;
  private final Stance stance;
  private final boolean mirrored;
  private final Lean lean;
  private final int barrier;
  private final double groundMm;
  private boolean isProof = true;

  /** The planner of a site. */
  WheelPlanner(Site site) {
    this.site = site;
    this.coach = site.coach();
    this.stance = new Stance(coach);
    // Planned with the right side low; a left one is its mirror image.
    this.mirrored = site.lean().rollRad() < 0;
    this.lean = new Lean(Math.abs(site.lean().rollRad()), site.lean().pitchRad());
    this.barrier = Barrier.piece(site);
    this.groundMm = barrier == Barrier.NONE ? 0 : Kind.thicknessMm(coach.pieces().get(barrier));
  }

  /** The best plan that leaves the jacks out of account; empty only if nothing keeps the limits. */
  Optional<WheelPlan> plan(Task task) {
    Limits limits =
        new Limits(task == Task.ALL ? Limits.noneHangs(stance) : List.of(), Piles.any());
    return plan(task, limits, Range.ANY, find -> true);
  }

  /**
   * The best plan that lifts the low end as well as the low side, and leaves the jacks what they
   * can do; empty if there is none.
   */
  Optional<WheelPlan> planFor(JackPlanner jacks) {
    double[] sagMm = Limits.sagMm(stance, SHARED_RAD);
    Range allowed = jacks.allowedRad(Math.abs(lean.pitchRad()) + Site.MOST_RAD, sagMm);
    if (allowed.from() > allowed.to() || stance.axles == 1) {
      return Optional.empty();
    }
    List<Limit> line = Limits.nearTheLine(stance, SHARED_RAD);
    return plan(
        Task.SIDES_AND_LOW_END,
        jacks.limits(line, lean.pitchRad(), groundMm),
        allowed,
        find -> jacks.takes(lifts(find), find.pitchRad()));
  }

  private Optional<WheelPlan> plan(
      Task task, Limits limits, Range remains, Predicate<Find> accept) {
    Question question =
        new Question(
            lean.rollRad(),
            lean.pitchRad(),
            site.toleranceRad(),
            coach.levelling().twistRad() + 1e-12,
            task == Task.ALL && stance.axles > 1,
            limits,
            remains.from(),
            remains.to(),
            accept);
    int most = Arrays.stream(counts(task)).sum();
    Search search = search(task, false, question);
    Find find = search.run(most, () -> search(task, true, question).run(most, () -> null));
    isProof = search.isProof();
    return Optional.ofNullable(find).map(this::plan).map(plan -> plan.proven(isProof));
  }

  /** Whether the last plan is the best for certain, or there is none for certain. */
  boolean isProof() {
    return isProof;
  }

  /** How high the wheels stand, mirrored or not. */
  private WheelLifts lifts(Find find) {
    double[] leftMm = new double[stance.axles];
    double[] rightMm = new double[stance.axles];
    for (int k = 0; k < stance.axles; k++) {
      Choice choice = find.choices()[k];
      Stack left = choice.left();
      leftMm[k] = left == null ? groundMm : left.heightMm();
      rightMm[k] = choice.right().heightMm();
    }
    return mirrored
        ? new WheelLifts(stance, rightMm, leftMm)
        : new WheelLifts(stance, leftMm, rightMm);
  }

  /** A search for the best, or a rough one that looks at few stacks of each height. */
  private Search search(Task task, boolean rough, Question question) {
    int[] counts = counts(task);
    long[] onBoard = Inventory.pack(counts);
    AxleChoices[] axles = new AxleChoices[stance.axles];
    for (int k = 0; k < axles.length; k++) {
      Stacks stacks = new Stacks(kinds(coach.axles().get(k), counts), counts, terms(rough));
      axles[k] = new AxleChoices(stacks, onBoard, stance.trackMm[k], groundMm, both(task, k));
    }
    return new Search(stance, axles, onBoard, prices(counts), question);
  }

  private Prices prices(int[] counts) {
    double[] lowest = new double[counts.length];
    for (int i = 0; i < lowest.length; i++) {
      lowest[i] = mayBeLowest(i, coach.pieces().get(i).kind()) ? 1 : 0;
    }
    return new Prices(counts, lowest);
  }

  /** Whether something has to lie under every tyre. */
  private boolean asksGround() {
    return barrier != Barrier.NONE;
  }

  /** Both stations of an axle are lifted where ends have to rise. */
  private boolean both(Task task, int k) {
    return switch (task) {
      case SIDES -> false;
      case ALL -> true;
      case SIDES_AND_LOW_END -> isLowEnd(k);
    };
  }

  private boolean isLowEnd(int k) {
    double middleMm = (stance.xMm[0] + stance.xMm[stance.axles - 1]) / 2;
    return lean.pitchRad() > 0 ? stance.xMm[k] >= middleMm : stance.xMm[k] <= middleMm;
  }

  /** Pieces on board, less those that lie under tyres about which nothing is decided. */
  private int[] counts(Task task) {
    int[] counts = new int[coach.pieces().size()];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = Math.min(coach.pieces().get(i).count(), Inventory.MOST);
    }
    for (int k = 0; asksGround() && k < stance.axles; k++) {
      if (!both(task, k)) {
        counts[barrier] -= Kind.abreast(coach.pieces().get(barrier), coach.axles().get(k));
      }
    }
    return counts;
  }

  private Stacks.Terms terms(boolean rough) {
    return new Stacks.Terms(
        (long) Math.floor(coach.levelling().stepMm() * Kind.NM_PER_MM + 0.5),
        (long) Math.floor(coach.levelling().stackMm() * Kind.NM_PER_MM + 0.5),
        !asksGround(),
        rough);
  }

  private List<Kind> kinds(Axle axle, int[] counts) {
    List<Kind> kinds = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      Piece piece = coach.pieces().get(i);
      Kind kind = Kind.of(i, piece, axle, mayBeLowest(i, piece.kind()));
      if (Kind.carries(piece, axle)
          && counts[i] >= kind.abreast()
          && kind.thicknessNm() <= Math.min(terms(true).stepNm(), terms(true).stackNm())) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private boolean mayBeLowest(int index, PieceKind kind) {
    if (asksGround()) {
      return index == barrier;
    }
    return site.surface().mayBeLowest(kind);
  }

  private WheelPlan plan(Find find) {
    List<WheelStack> wheels = new ArrayList<>();
    int pieces = 0;
    double leastTurn = Double.POSITIVE_INFINITY;
    double mostTurn = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < stance.axles; k++) {
      Choice choice = find.choices()[k];
      leastTurn = Math.min(leastTurn, choice.turnRad());
      mostTurn = Math.max(mostTurn, choice.turnRad());
      Stack mirrorLeft = mirrored ? choice.right() : choice.left();
      Stack mirrorRight = mirrored ? choice.left() : choice.right();
      add(wheels, k, Direction.LEFT, mirrorLeft);
      add(wheels, k, Direction.RIGHT, mirrorRight);
    }
    for (WheelStack wheel : wheels) {
      pieces += wheel.pieces();
    }
    double rollRad = mirrored ? 0 - find.rollRad() : find.rollRad();
    return new WheelPlan(
        wheels,
        new Lean(rollRad, find.pitchRad()),
        mostTurn - leastTurn,
        Excess.hundredths(find.leanRad(), site.toleranceRad()),
        pieces);
  }

  private void add(List<WheelStack> wheels, int k, Direction side, @Nullable Stack stack) {
    Axle axle = coach.axles().get(k);
    Layers layers =
        new Layers(axle, coach.pieces(), i -> mayBeLowest(i, coach.pieces().get(i).kind()));
    if (stack != null && stack.pieces() > 0) {
      wheels.add(layers.write(stack, side));
    } else if (stack == null && asksGround()) {
      Piece piece = coach.pieces().get(barrier);
      Layer layer = new Layer(piece.id(), Kind.abreast(piece, axle));
      wheels.add(new WheelStack(axle.id(), side, groundMm, List.of(layer), List.of()));
    }
  }
}
