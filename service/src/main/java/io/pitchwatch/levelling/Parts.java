package io.pitchwatch.levelling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Stacks, or upper parts of as many flights, by the number of pieces they take. */
final class Parts {

  private static final long ROUGHLY_NM = 1_000_000;

  /** A stack, its place in lists, and what it costs at several prices. */
  private static final int STACK_WORDS = 16;

  private final boolean rough;
  private final int[] most;
  private final List<List<Stack>> byPieces = new ArrayList<>();
  private final Map<Long, Fitting> byHeight = new HashMap<>();
  private final Map<Long, Double> costByHeight = new HashMap<>();
  private int count;
  private int indexWords;

  /**
   * None so far.
   *
   * @param most pieces on board, by kind
   * @param rough whether of those of one millimetre only the cheapest are kept, or all but those
   *     that take no less than another one exactly as tall
   */
  Parts(int[] most, boolean rough) {
    this.most = most;
    this.rough = rough;
  }

  /** Those of exactly so many pieces. */
  List<Stack> of(int pieces) {
    while (byPieces.size() <= pieces) {
      byPieces.add(new ArrayList<>());
    }
    return byPieces.get(pieces);
  }

  /** How many there are. */
  int count() {
    return count;
  }

  /**
   * Adds one unless it is not wanted; those of fewer pieces come first.
   *
   * @param part to be added
   * @param cost of it
   * @return words of eight bytes that this takes in memory
   */
  int add(Stack part, double cost) {
    int words = indexWords;
    if (rough ? isCheapest(part, cost) : isUndominated(part)) {
      of(part.pieces()).add(part);
      count++;
      return STACK_WORDS + part.use().length + indexWords - words;
    }
    return 0;
  }

  private boolean isCheapest(Stack part, double cost) {
    long height = part.heightNm() / ROUGHLY_NM;
    if (cost >= costByHeight.getOrDefault(height, Double.POSITIVE_INFINITY)) {
      return false;
    }
    costByHeight.put(height, cost);
    return true;
  }

  private boolean isUndominated(Stack part) {
    Fitting asTall = byHeight.computeIfAbsent(part.heightNm(), h -> new Fitting(most));
    int[] takes = new int[most.length];
    Inventory.unpack(part.use(), takes);
    if (asTall.any(takes)) {
      return false;
    }
    int before = asTall.words();
    asTall.add(takes);
    indexWords += asTall.words() - before;
    return true;
  }
}
