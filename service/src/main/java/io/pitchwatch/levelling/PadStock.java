package io.pitchwatch.levelling;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Pad;
import java.util.ArrayList;
import java.util.List;

/**
 * The pads that are shared out among the feet: all on board, or, where there are more ways to do so
 * than can be compared, fewer of the thinnest, which shorten a travel least.
 */
final class PadStock {

  /** Piles times what may be used up before them: about a second's work on a small computer. */
  private static final double MOST_WORK = 10_000_000;

  private static final int FEET_OF_A_PAIR = 2;

  private final List<Pad> pads;
  private final int feet;
  private final double gapMm;

  private PadStock(Coach coach) {
    pads = new ArrayList<>(coach.pads());
    feet = FEET_OF_A_PAIR * coach.jackPairs().size();
    double clearanceMm =
        coach.jackPairs().stream().mapToDouble(JackPair::clearanceMm).max().orElse(0);
    gapMm = clearanceMm + coach.levelling().stackMm();
  }

  /** The pads of a coach in its order, with the counts that are shared out. */
  static List<Pad> of(Coach coach) {
    PadStock stock = new PadStock(coach);
    for (int i = 0; i < stock.pads.size(); i++) {
      stock.count(i, Math.min(coach.pads().get(i).count(), stock.feet * stock.mostInAPile(i)));
    }
    while (stock.work() > MOST_WORK) {
      int thinnest = stock.thinnest();
      stock.count(thinnest, stock.pads.get(thinnest).count() / 2);
    }
    return List.copyOf(stock.pads);
  }

  private int mostInAPile(int i) {
    return (int) (gapMm / pads.get(i).thicknessMm());
  }

  private void count(int i, int count) {
    Pad pad = pads.get(i);
    pads.set(i, new Pad(pad.id(), pad.thicknessMm(), pad.lengthMm(), pad.widthMm(), count));
  }

  /** The thinnest kind of which there is any. */
  private int thinnest() {
    int thinnest = -1;
    for (int i = 0; i < pads.size(); i++) {
      if (pads.get(i).count() > 0
          && (thinnest < 0 || pads.get(i).thicknessMm() < pads.get(thinnest).thicknessMm())) {
        thinnest = i;
      }
    }
    return thinnest;
  }

  private double work() {
    double used = 1;
    for (Pad pad : pads) {
      used *= pad.count() + 1;
    }
    return used * piles();
  }

  /** How many piles there are no higher than the widest gap, thicknesses rounded down. */
  private double piles() {
    double[] byHeight = new double[(int) gapMm + 1];
    byHeight[0] = 1;
    for (Pad pad : pads) {
      int thickness = (int) pad.thicknessMm();
      double[] with = new double[byHeight.length];
      for (int height = 0; height < byHeight.length; height++) {
        for (int n = 0; n <= pad.count() && height + n * thickness < with.length; n++) {
          with[height + n * thickness] += byHeight[height];
        }
      }
      byHeight = with;
    }
    double piles = 0;
    for (double each : byHeight) {
      piles += each;
    }
    return piles;
  }
}
