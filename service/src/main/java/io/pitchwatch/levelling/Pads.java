package io.pitchwatch.levelling;

import io.pitchwatch.coach.Pad;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Shares the pads on board out among the feet of the jacks.
 *
 * <p>Exact, foot by foot over what is used up: first as few feet as can be past their stroke, then
 * as little travel past what the owner wants to stay under, then as few pads. A pile is no higher
 * than the gap it has to slide into, and no pad is smaller than the foot on it.
 */
final class Pads {

  private static final double SAME_MM = 1e-6;

  /** More heights of piles than this are not told apart. */
  private static final int MOST_HEIGHTS = 10_000;

  private final List<Pad> kinds;
  private final double[] heightsMm;
  private final Map<List<Integer>, Boolean> suffice = new HashMap<>();

  Pads(List<Pad> kinds) {
    this.kinds = kinds;
    this.heightsMm = heightsMm(kinds);
  }

  /** Every height that a pile could have, ascending; empty where there are too many. */
  private static double[] heightsMm(List<Pad> kinds) {
    TreeSet<Double> heights = new TreeSet<>(List.of(0.0));
    for (Pad kind : kinds) {
      List<Double> below = List.copyOf(heights);
      for (int n = 1; n <= kind.count(); n++) {
        for (double height : below) {
          heights.add(height + n * kind.thicknessMm());
        }
        if (heights.size() > MOST_HEIGHTS) {
          return new double[0];
        }
      }
    }
    return heights.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * A foot.
   *
   * @param gapMm to the ground, retracted
   * @param raiseMm past contact
   * @param strokeMm longest travel
   * @param keepUnderMm travel to stay under
   * @param footMm its diameter
   */
  record Foot(double gapMm, double raiseMm, double strokeMm, double keepUnderMm, double footMm) {
    double travelMm(double padMm) {
      return gapMm + raiseMm - padMm;
    }

    boolean isPastStroke(double padMm) {
      return travelMm(padMm) > strokeMm + SAME_MM;
    }
  }

  /** What is under the feet so far, and what it costs. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared, never written to.
  private record Share(
      int[] used,
      int pastStroke,
      double pastKeepMm2,
      int pads,
      int @Nullable [] pile,
      @Nullable Share before) {

    boolean isBetterThan(Share other) {
      if (pastStroke != other.pastStroke) {
        return pastStroke < other.pastStroke;
      }
      if (Math.abs(pastKeepMm2 - other.pastKeepMm2) > SAME_MM) {
        return pastKeepMm2 < other.pastKeepMm2;
      }
      return pads < other.pads;
    }
  }

  /**
   * Whether the pads keep all feet inside their stroke. Which pile is the lowest that does and
   * which the highest that slides in settles it, so that much is remembered.
   */
  boolean suffice(List<Foot> feet) {
    if (feet.stream().noneMatch(foot -> foot.isPastStroke(0))) {
      return true;
    }
    if (heightsMm.length == 0) {
      return isEnough(feet);
    }
    List<Integer> key = new ArrayList<>();
    for (Foot foot : feet) {
      key.add(Sorted.from(heightsMm, foot.travelMm(foot.strokeMm()) - SAME_MM));
      key.add(Sorted.from(heightsMm, Math.nextUp(foot.gapMm() + SAME_MM)));
    }
    return suffice.computeIfAbsent(key, any -> isEnough(feet));
  }

  private boolean isEnough(List<Foot> feet) {
    List<int[]> piles = share(feet);
    for (int i = 0; i < piles.size(); i++) {
      if (feet.get(i).isPastStroke(heightMm(piles.get(i)))) {
        return false;
      }
    }
    return true;
  }

  /** The piles, one for each foot: how many of each kind. */
  List<int[]> share(List<Foot> feet) {
    Map<List<Integer>, Share> shares = new HashMap<>();
    shares.put(key(new int[kinds.size()]), new Share(new int[kinds.size()], 0, 0, 0, null, null));
    for (Foot foot : feet) {
      Map<List<Integer>, Share> next = new HashMap<>();
      for (Share share : shares.values()) {
        pile(foot, share, new int[kinds.size()], 0, next);
      }
      shares = next;
    }
    Share best = null;
    for (Share share : shares.values()) {
      if (best == null || share.isBetterThan(best)) {
        best = share;
      }
    }
    List<int[]> piles = new ArrayList<>();
    for (Share share = best; share != null && share.pile() != null; share = share.before()) {
      piles.add(0, share.pile());
    }
    return piles;
  }

  /** Whether a pad is no smaller than a foot. */
  static boolean carries(Pad pad, double footMm) {
    return Math.min(pad.lengthMm(), pad.widthMm()) >= footMm - SAME_MM;
  }

  /** Tries every pile of kinds from one on, on top of what is piled up. */
  private void pile(Foot foot, Share share, int[] pile, int from, Map<List<Integer>, Share> into) {
    if (from == kinds.size()) {
      keep(foot, share, pile.clone(), into);
      return;
    }
    Pad kind = kinds.get(from);
    int most = carries(kind, foot.footMm()) ? kind.count() - share.used()[from] : 0;
    for (int n = 0; n <= most && heightMm(pile) <= foot.gapMm() + SAME_MM; n++) {
      pile(foot, share, pile, from + 1, into);
      pile[from]++;
    }
    pile[from] = 0;
  }

  private void keep(Foot foot, Share share, int[] pile, Map<List<Integer>, Share> into) {
    double travelMm = foot.travelMm(heightMm(pile));
    int[] used = share.used().clone();
    int pads = share.pads();
    for (int i = 0; i < used.length; i++) {
      used[i] += pile[i];
      pads += pile[i];
    }
    Share next =
        new Share(
            used,
            share.pastStroke() + (foot.isPastStroke(heightMm(pile)) ? 1 : 0),
            share.pastKeepMm2() + square(Math.max(0, travelMm - foot.keepUnderMm())),
            pads,
            pile,
            share);
    into.merge(key(used), next, (a, b) -> b.isBetterThan(a) ? b : a);
  }

  private static double square(double mm) {
    return mm * mm;
  }

  double heightMm(int[] pile) {
    double heightMm = 0;
    for (int i = 0; i < pile.length; i++) {
      heightMm += pile[i] * kinds.get(i).thicknessMm();
    }
    return heightMm;
  }

  private static List<Integer> key(int[] used) {
    List<Integer> key = new ArrayList<>(used.length);
    for (int each : used) {
      key.add(each);
    }
    return key;
  }
}
