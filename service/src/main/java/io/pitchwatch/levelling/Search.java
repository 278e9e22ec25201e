package io.pitchwatch.levelling;

import io.pitchwatch.levelling.Choices.Range;
import io.pitchwatch.levelling.Prices.Budget;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best combination of choices, one for each axle, and proves it by leaving nothing out
 * that could be better.
 *
 * <p>It goes up by the number of pieces. A plan of more pieces is better only if its excess is
 * less, so what was found so far bounds the lean that is still of interest. It ends at the first
 * number of pieces whose best lies inside the tolerance: the preference puts excess before pieces,
 * and less than none there is not.
 *
 * <p>Where so much is on board that the search would outgrow its memory, it ends with the best that
 * was found till then, and that is no proof.
 */
final class Search {

  /** So many stacks and choices take longer than a guess. */
  private static final int LARGE = 4000;

  /** Left to the rest of the service, bytes. */
  private static final long HEAP_SPARED = 24 << 20;

  /** More than any coach with 40 pieces of 8 kinds needed in trials, words of eight bytes. */
  private static final long MOST_WORDS = 24_000_000;

  /** A guess is asked for while the search it is for keeps what it has. */
  private static final long GUESS_WORDS = 3_000_000;

  private final AxleChoices[] axles;
  private final Question question;
  private final Prices prices;
  private final Reach reach;
  private final Bound bound;
  private final Join join;
  private final Choices[] level;
  private final int[] least;
  private final Allowance memory;
  private double pricedRad = Double.POSITIVE_INFINITY;

  Search(Stance stance, AxleChoices[] axles, long[] onBoard, Prices prices, Question question) {
    this.axles = axles;
    this.question = question;
    this.prices = prices;
    this.reach = new Reach(stance, axles, question.terms());
    this.bound = new Bound(stance, question);
    this.join = new Join(stance, question, bound, onBoard);
    this.level = new Choices[axles.length];
    this.least = new int[axles.length];
    this.memory = new Allowance(axles[0].isRough() ? GUESS_WORDS : words());
    Arrays.stream(axles).forEach(axle -> axle.keepWithin(memory));
  }

  /** What the heap has room for. */
  private static long words() {
    long heap = (Runtime.getRuntime().maxMemory() - HEAP_SPARED) / Long.BYTES;
    return Math.max(GUESS_WORDS, Math.min(MOST_WORDS, heap));
  }

  /** Whether what was found is the best for certain. */
  boolean isProof() {
    return !memory.isSpent() && Arrays.stream(axles).allMatch(AxleChoices::hasAllFlights);
  }

  /**
   * The best combination, or null if there is none.
   *
   * @param mostPieces more than can be laid in any way
   * @param guess asked at most once, if the search grows large: a combination that may not be the
   *     best, or null; what is worse than that need not be looked at
   */
  @Nullable Find run(int mostPieces, Supplier<@Nullable Find> guess) {
    Find best = null;
    Find guessed = null;
    boolean asked = false;
    boolean ended = false;
    for (int n = 0; n <= mostPieces && !memory.isSpent() && !ended; n++) {
      if (!asked && Arrays.stream(axles).mapToInt(AxleChoices::size).sum() > LARGE) {
        asked = true;
        guessed = guess.get();
        noWorseThan(guessed);
      }
      ended = !narrow();
      Find found = ended ? null : ofPieces(n, best);
      if (found != null) {
        best = found;
        long excess = Excess.hundredths(found.leanRad(), question.toleranceRad());
        ended = excess == 0;
        bound.lower(Excess.leanBelowRad(excess, question.toleranceRad()));
      }
    }
    return isProof() ? best : better(best, asked || ended ? guessed : guess.get());
  }

  /** The best of so many pieces that is better than that of fewer, or null. */
  private @Nullable Find ofPieces(int pieces, @Nullable Find fewer) {
    join.best.begin(fewer);
    if (suffice(pieces)) {
      split(0, pieces);
    }
    return join.best.get();
  }

  /** Of two, by excess and pieces; null if there is none. */
  private @Nullable Find better(@Nullable Find one, @Nullable Find other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    Comparator<Find> order =
        Comparator.<Find>comparingLong(
                find -> Excess.hundredths(find.leanRad(), question.toleranceRad()))
            .thenComparingInt(Find::pieces)
            .thenComparingDouble(Find::leanRad);
    return order.compare(other, one) < 0 ? other : one;
  }

  private void noWorseThan(@Nullable Find guess) {
    if (guess != null) {
      long excess = Excess.hundredths(guess.leanRad(), question.toleranceRad());
      bound.lower(Excess.leanBelowRad(excess + 1, question.toleranceRad()));
    }
  }

  /** What the bound leaves to each axle; whether it leaves anything. */
  private boolean narrow() {
    if (bound.rad() >= pricedRad) {
      return true;
    }
    pricedRad = bound.rad();
    reach.narrow(new Reach.Wish(bound.mostRad(), bound.liftFromMm(), bound.liftToMm()));
    join.within(reach);
    for (int k = 0; k < axles.length; k++) {
      axles[k].want(
          new Range(reach.fromRad[k], reach.toRad[k]), new Range(reach.fromMm[k], reach.toMm[k]));
    }
    return !reach.isEmpty()
        && Arrays.stream(axles).noneMatch(AxleChoices::wantsNone)
        && isAffordable();
  }

  private boolean isAffordable() {
    List<List<Budget>> budgets = prices.budgets(List.of(axles));
    for (int k = 0; k < axles.length; k++) {
      for (Budget budget : budgets.get(k)) {
        if (axles[k].leastCost(budget.price(), null) > budget.most()) {
          return false;
        }
      }
      axles[k].afford(budgets.get(k));
    }
    return true;
  }

  /** Finds the fewest pieces each axle could have; whether that many are enough for all. */
  private boolean suffice(int pieces) {
    int spare = pieces - Arrays.stream(least).sum();
    for (int k = 0; k < axles.length; k++) {
      while (spare >= 0 && axles[k].ofPieces(least[k]).isEmpty()) {
        // What was wanted of an axle gets less, never more.
        least[k]++;
        spare--;
      }
    }
    return spare >= 0;
  }

  /** Shares the pieces out among the axles in every way. */
  private void split(int k, int left) {
    if (k == axles.length - 1) {
      level[k] = axles[k].ofPieces(left);
      if (!level[k].isEmpty()) {
        join.join(level);
      }
      return;
    }
    int others = 0;
    for (int j = k + 1; j < axles.length; j++) {
      others += least[j];
    }
    for (int n = least[k]; n <= left - others; n++) {
      level[k] = axles[k].ofPieces(n);
      if (!level[k].isEmpty()) {
        split(k + 1, left - n);
      }
    }
  }
}
