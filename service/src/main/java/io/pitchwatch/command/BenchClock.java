package io.pitchwatch.command;

/** The time by which a sensor at the bench is asked; another one stands in for it in trials. */
interface BenchClock {

  /** The machine's own. */
  BenchClock SYSTEM =
      new BenchClock() {
        @Override
        public long nanos() {
          return System.nanoTime();
        }

        @Override
        public void await(long untilNanos) throws InterruptedException {
          long left = untilNanos - System.nanoTime();
          if (left > 0) {
            Thread.sleep(left / 1_000_000, (int) (left % 1_000_000));
          }
        }
      };

  /** Monotonic time, nanoseconds. */
  long nanos();

  /** Returns when a monotonic time has come. */
  void await(long untilNanos) throws InterruptedException;
}
