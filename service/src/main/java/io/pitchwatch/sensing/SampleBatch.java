package io.pitchwatch.sensing;

/** Raw samples of one look at a chip, until it is known that they may be handed on. */
final class SampleBatch {

  private final int[] counts;
  private int size;
  private double lsbPerG = 1;
  private int least;
  private int most;

  /**
   * An empty batch.
   *
   * @param capacity most samples of one look
   */
  SampleBatch(int capacity) {
    counts = new int[3 * capacity];
  }

  /**
   * Sets what counts mean.
   *
   * @param lsbPerG counts for 1 g
   * @param least count at which an axis is at the lower end of its range
   * @param most count at which it is at the upper end
   */
  void scale(double lsbPerG, int least, int most) {
    this.lsbPerG = lsbPerG;
    this.least = least;
    this.most = most;
  }

  void clear() {
    size = 0;
  }

  void add(int x, int y, int z) {
    counts[3 * size] = x;
    counts[3 * size + 1] = y;
    counts[3 * size + 2] = z;
    size++;
  }

  int size() {
    return size;
  }

  /**
   * Hands on what was added.
   *
   * @param clock times the samples
   * @param lost whether samples are known to be missing before these
   * @param nowNanos host's monotonic time just before the look
   */
  void deliver(SampleClock clock, boolean lost, long nowNanos, SampleSink sink) {
    if (lost) {
      clock.restart();
    }
    if (!clock.look(size, nowNanos) || lost) {
      sink.gap(nowNanos);
    }
    for (int i = 0; i < 3 * size; i += 3) {
      long nanos = clock.next();
      if (atEnd(counts[i]) || atEnd(counts[i + 1]) || atEnd(counts[i + 2])) {
        sink.saturated(nanos);
      } else {
        sink.sample(nanos, counts[i] / lsbPerG, counts[i + 1] / lsbPerG, counts[i + 2] / lsbPerG);
      }
    }
  }

  private boolean atEnd(int count) {
    return count <= least || count >= most;
  }
}
