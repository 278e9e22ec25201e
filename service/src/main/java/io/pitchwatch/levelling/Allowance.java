package io.pitchwatch.levelling;

/**
 * How much one search may keep in memory. Owners may carry more than any search can compare stack
 * by stack, and the service has other work to do in the same heap.
 */
final class Allowance {

  /** Words of eight bytes. */
  private long left;

  /** So many words of eight bytes. */
  Allowance(long words) {
    left = words;
  }

  /** Takes so many words; more than there are and it is spent. */
  void take(long words) {
    left -= words;
  }

  /** Whether so many words more are there; if not, it is spent. */
  boolean covers(long words) {
    if (words > left) {
      left = -1;
    }
    return left >= 0;
  }

  /** Whether more was asked for than there was. */
  boolean isSpent() {
    return left < 0;
  }
}
