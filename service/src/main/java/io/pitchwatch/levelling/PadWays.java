package io.pitchwatch.levelling;

import io.pitchwatch.coach.Pad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lists the ways in which pads may be shared out among feet. */
final class PadWays {

  /** More than this are not told apart: eight pads under four feet are fewer (our own figure). */
  private static final int MOST = 500;

  private final List<Pad> kinds;
  private final List<Room> rooms;
  private final double[] wayMm;
  private final int[] left;
  private final List<double[]> ways = new ArrayList<>();
  private int seen;

  /**
   * Where a pile may stand.
   *
   * @param highestMm no pile is higher
   * @param footMm diameter of the foot on it
   */
  record Room(double highestMm, double footMm) {}

  PadWays(List<Pad> kinds, List<Room> rooms) {
    this.kinds = kinds;
    this.rooms = rooms;
    wayMm = new double[rooms.size()];
    left = kinds.stream().mapToInt(Pad::count).toArray();
  }

  /**
   * Heights of the piles, millimetres, of every way that is not as good as another in every place.
   * Where there are too many, of one that is better than any could be.
   */
  List<double[]> list() {
    pile(0, 0);
    if (seen <= MOST) {
      return ways;
    }
    double[] all = new double[rooms.size()];
    Arrays.setAll(all, i -> Math.min(rooms.get(i).highestMm(), allMm(rooms.get(i))));
    return List.of(all);
  }

  private double allMm(Room room) {
    return kinds.stream()
        .filter(pad -> Pads.carries(pad, room.footMm()))
        .mapToDouble(pad -> pad.count() * pad.thicknessMm())
        .sum();
  }

  /** Piles up kinds from one on, in one place and those after it. */
  private void pile(int place, int kind) {
    if (seen > MOST) {
      return;
    }
    if (place == rooms.size()) {
      seen++;
      Piles.add(wayMm.clone(), ways);
      return;
    }
    if (kind == kinds.size()) {
      pile(place + 1, 0);
      return;
    }
    Pad pad = kinds.get(kind);
    Room room = rooms.get(place);
    double belowMm = wayMm[place];
    int there = left[kind];
    int most = Pads.carries(pad, room.footMm()) ? there : 0;
    for (int n = 0; n <= most && wayMm[place] <= room.highestMm(); n++) {
      pile(place, kind + 1);
      wayMm[place] += pad.thicknessMm();
      left[kind]--;
    }
    wayMm[place] = belowMm;
    left[kind] = there;
  }
}
