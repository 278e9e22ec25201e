package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/**
 * The contract of docs/levelling.md read literally, and every plan there is looked at: stacks grow
 * layer by layer from the ground, every set of prefixes is tried as a stair, all stations are
 * combined. Nothing of the planner is used, nothing is pruned but what the inventory forbids. Only
 * for a handful of pieces.
 */
final class WheelPlannerOracle {

  private final Site site;
  private final Coach coach;
  private final boolean ends;
  private final Predicate<double[]> accept;
  private final int barrier;
  private final List<Station> stations = new ArrayList<>();
  private final int[] left;
  private Best best = new Best(Long.MAX_VALUE, 0, 0, 0);

  /** How good the best plan is, in the order of preference; the lean in radians. */
  record Best(long excessHundredths, int pieces, double leanRad, double tallestMm) {}

  /** A wheel station, and what it may stand on. */
  private record Station(int axle, boolean right, List<Standing> standings) {}

  /** Something to stand on, with its stair. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  private record Standing(double heightMm, int[] use) {}

  private WheelPlannerOracle(
      Site site, boolean ends, IntPredicate liftsBoth, Predicate<double[]> accept) {
    this.site = site;
    this.coach = site.coach();
    this.ends = ends;
    this.accept = accept;
    this.barrier = barrier();
    this.left = coach.pieces().stream().mapToInt(Piece::count).toArray();
    boolean rightIsLow = site.lean().rollRad() >= 0;
    for (int axle = 0; axle < coach.axles().size(); axle++) {
      for (boolean right : new boolean[] {false, true}) {
        boolean lifted = liftsBoth.test(axle) || right == rightIsLow;
        stations.add(new Station(axle, right, lifted ? standings(axle) : untouched(axle)));
      }
    }
  }

  /** The best plan for the sides alone, or for sides and ends. */
  static Best best(Site site, boolean ends) {
    return new WheelPlannerOracle(site, ends, axle -> ends, heights -> true).find();
  }

  /**
   * The best plan for the sides that is accepted, with both wheels of some axles lifted.
   *
   * @param liftsBoth whether both wheels of an axle, by its index, may be lifted
   * @param accept asked with the height of every station, front to back, left before right
   * @return empty if none is accepted
   */
  static Optional<Best> best(Site site, IntPredicate liftsBoth, Predicate<double[]> accept) {
    Best best = new WheelPlannerOracle(site, false, liftsBoth, accept).find();
    return best.excessHundredths == Long.MAX_VALUE ? Optional.empty() : Optional.of(best);
  }

  private Best find() {
    combine(0, new double[stations.size()], 0);
    return best;
  }

  private int abreast(Piece piece, Axle axle) {
    int abreast = 1;
    while (abreast * piece.widthMm() < axle.footprintMm() - 1e-6) {
      abreast++;
    }
    return abreast;
  }

  private boolean carries(Piece piece, Axle axle) {
    return piece.maxLoadKg() * abreast(piece, axle) >= axle.loadKg() / 2 - 1e-6;
  }

  /** The thinnest sheet or board of which there is enough for every tyre; −1 if none is asked. */
  private int barrier() {
    boolean hard = site.surface() == Surface.CONCRETE || site.surface() == Surface.ASPHALT;
    int found = -1;
    for (int i = 0; i < coach.pieces().size() && hard && site.stay() == Stay.SEASON; i++) {
      Piece piece = coach.pieces().get(i);
      int needed = coach.axles().stream().mapToInt(axle -> 2 * abreast(piece, axle)).sum();
      boolean suffices =
          piece.kind() != PieceKind.BLOCK
              && piece.count() >= needed
              && piece.thicknessMm() <= coach.levelling().stepMm()
              && piece.thicknessMm() <= coach.levelling().stackMm()
              && coach.axles().stream().allMatch(axle -> carries(piece, axle));
      if (suffices
          && (found < 0 || piece.thicknessMm() < coach.pieces().get(found).thicknessMm())) {
        found = i;
      }
    }
    return found;
  }

  private boolean mayLieOnTheGround(int piece) {
    PieceKind kind = coach.pieces().get(piece).kind();
    if (barrier >= 0) {
      return piece == barrier;
    }
    return switch (site.surface()) {
      case SOFT, GRASS -> kind == PieceKind.SHEET || kind == PieceKind.BOARD;
      case GRAVEL -> kind != PieceKind.SHEET;
      case CONCRETE, ASPHALT -> true;
    };
  }

  /** A station of the high side: the bare ground, or what lies under every tyre. */
  private List<Standing> untouched(int axle) {
    int[] use = new int[left.length];
    if (barrier < 0) {
      return List.of(new Standing(0, use));
    }
    use[barrier] = abreast(coach.pieces().get(barrier), coach.axles().get(axle));
    return List.of(new Standing(coach.pieces().get(barrier).thicknessMm(), use));
  }

  private List<Standing> standings(int axle) {
    Map<String, Standing> found = new LinkedHashMap<>();
    if (barrier < 0) {
      Standing ground = new Standing(0, new int[left.length]);
      found.put("", ground);
    }
    int[] none = new int[left.length];
    grow(coach.axles().get(axle), new Growing(0, 0, none, none), found);
    return List.copyOf(found.values());
  }

  /**
   * A stack in the making.
   *
   * @param heightMm so far
   * @param stairMm height of the last stair step before it
   * @param layers pieces in the stack itself
   * @param stair pieces in all the stair steps so far
   */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  private record Growing(double heightMm, double stairMm, int[] layers, int[] stair) {}

  private void grow(Axle axle, Growing below, Map<String, Standing> found) {
    for (int i = 0; i < left.length; i++) {
      Piece piece = coach.pieces().get(i);
      double heightMm = below.heightMm + piece.thicknessMm();
      boolean onTheGround = below.heightMm == 0;
      if (!carries(piece, axle)
          || (onTheGround && !mayLieOnTheGround(i))
          || heightMm > coach.levelling().stackMm() + 1e-6
          || heightMm - below.stairMm > coach.levelling().stepMm() + 1e-6) {
        continue;
      }
      int[] layers = below.layers.clone();
      layers[i] += abreast(piece, axle);
      int[] use = sum(layers, below.stair);
      if (!isOnBoard(use)) {
        continue;
      }
      // Climbed from the last step of the stair, it is a stack; or it is a step of the stair.
      found.putIfAbsent(
          Math.round(heightMm * 1e4) + Arrays.toString(use), new Standing(heightMm, use));
      grow(axle, new Growing(heightMm, below.stairMm, layers, below.stair), found);
      grow(axle, new Growing(heightMm, heightMm, layers, use), found);
    }
  }

  private static int[] sum(int[] a, int[] b) {
    int[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  private boolean isOnBoard(int[] use) {
    for (int i = 0; i < use.length; i++) {
      if (use[i] > left[i]) {
        return false;
      }
    }
    return true;
  }

  private void combine(int station, double[] heightMm, int pieces) {
    if (station == stations.size()) {
      judge(heightMm, pieces);
      return;
    }
    for (Standing standing : stations.get(station).standings()) {
      if (isOnBoard(standing.use)) {
        heightMm[station] = standing.heightMm;
        take(standing.use, 1);
        combine(station + 1, heightMm, pieces + Arrays.stream(standing.use).sum());
        take(standing.use, -1);
      }
    }
  }

  private void take(int[] use, int times) {
    for (int i = 0; i < use.length; i++) {
      left[i] -= times * use[i];
    }
  }

  private void judge(double[] heightMm, int pieces) {
    int axles = coach.axles().size();
    double stiffness = coach.axles().stream().mapToDouble(Axle::stiffness).sum();
    double roll = site.lean().rollRad();
    double leastTurn = Double.POSITIVE_INFINITY;
    double mostTurn = Double.NEGATIVE_INFINITY;
    double[] meanMm = new double[axles];
    for (int k = 0; k < axles; k++) {
      Axle axle = coach.axles().get(k);
      // Stations are listed left before right.
      double turn = Math.atan((heightMm[2 * k + 1] - heightMm[2 * k]) / axle.trackMm());
      meanMm[k] = (heightMm[2 * k] + heightMm[2 * k + 1]) / 2;
      roll -= axle.stiffness() / stiffness * turn;
      leastTurn = Math.min(leastTurn, turn);
      mostTurn = Math.max(mostTurn, turn);
    }
    boolean twisted = mostTurn - leastTurn > coach.levelling().twistRad() + 1e-11;
    if (!twisted && !(ends && hangs(meanMm)) && accept.test(heightMm)) {
      double lean = ends ? Math.max(Math.abs(roll), Math.abs(pitch(meanMm))) : Math.abs(roll);
      double tallestMm = Arrays.stream(heightMm).max().orElse(0);
      prefer(new Best(excess(lean), pieces, lean, tallestMm));
    }
  }

  private double pitch(double[] meanMm) {
    int last = meanMm.length - 1;
    double baseMm = coach.axles().get(0).positionMm() - coach.axles().get(last).positionMm();
    double turn = last == 0 ? 0 : Math.atan((meanMm[0] - meanMm[last]) / baseMm);
    return site.lean().pitchRad() - turn;
  }

  /** Whether the axle in the middle hangs further from the body than it droops. */
  private boolean hangs(double[] meanMm) {
    if (meanMm.length < 3) {
      return false;
    }
    Axle front = coach.axles().get(0);
    Axle middle = coach.axles().get(1);
    Axle rear = coach.axles().get(2);
    double baseMm = front.positionMm() - rear.positionMm();
    double ofFront = (middle.positionMm() - rear.positionMm()) / baseMm;
    double bodyMm = ofFront * meanMm[0] + (1 - ofFront) * meanMm[2];
    return bodyMm - meanMm[1] > middle.droopMm() + 1e-9;
  }

  private long excess(double leanRad) {
    double overDeg = Math.toDegrees(leanRad - coach.levelling().toleranceRad(site.stay()));
    return Math.max(0, Math.round(overDeg * 100));
  }

  private void prefer(Best plan) {
    boolean better = plan.excessHundredths < best.excessHundredths;
    if (plan.excessHundredths == best.excessHundredths) {
      better = plan.pieces < best.pieces;
      if (plan.pieces == best.pieces) {
        boolean asLevel = Math.abs(plan.leanRad - best.leanRad) <= 1e-9;
        better = asLevel ? plan.tallestMm < best.tallestMm : plan.leanRad < best.leanRad;
      }
    }
    if (better) {
      best = plan;
    }
  }
}
