package io.pitchwatch.sensing;

/**
 * Brings a chip from any state to sampling, in steps that never wait: identify, reset, self-test if
 * asked for, configure.
 */
final class BringUp {

  /** The data sheets ask for about ten samples, 0.1 s at 100 Hz. */
  private static final int AVERAGED = 12;

  private enum Stage {
    IDENTIFY,
    AFTER_RESET,
    UNFORCED,
    FORCED,
    DONE
  }

  private final AccelerometerDriver driver;
  private final SelfTest selfTest;
  private Stage stage = Stage.IDENTIFY;
  private boolean testing;
  private long dueNanos;
  private long stageEndNanos;
  private SelfTest.Verdict verdict = SelfTest.Verdict.INCONCLUSIVE;

  BringUp(AccelerometerDriver driver) {
    this.driver = driver;
    this.selfTest = new SelfTest();
  }

  /** Starts over. */
  void begin(boolean withSelfTest, long nowNanos) {
    stage = Stage.IDENTIFY;
    testing = withSelfTest;
    dueNanos = nowNanos;
  }

  /** When the next step is wanted. */
  long dueNanos() {
    return dueNanos;
  }

  /** Whether the chip samples now. */
  boolean done() {
    return stage == Stage.DONE;
  }

  /** What the last self-test said. */
  SelfTest.Verdict verdict() {
    return verdict;
  }

  /** What the last self-test found wrong. */
  String fault() {
    return selfTest.fault();
  }

  /** Takes the next step; on any outcome but done, begin anew. */
  ChipOutcome step(long nowNanos) {
    return switch (stage) {
      case IDENTIFY -> identify(nowNanos);
      case AFTER_RESET -> testing ? startTest(false, nowNanos) : finish();
      case UNFORCED, FORCED -> average(nowNanos);
      case DONE -> ChipOutcome.Plain.DONE;
    };
  }

  private ChipOutcome identify(long nowNanos) {
    ChipOutcome outcome = driver.identify();
    if (outcome.ok()) {
      outcome = driver.reset();
    }
    stage = Stage.AFTER_RESET;
    dueNanos = nowNanos + driver.resetNanos();
    return outcome;
  }

  private ChipOutcome startTest(boolean forced, long nowNanos) {
    ChipOutcome outcome = driver.configureSelfTest(forced);
    long settledNanos = nowNanos + driver.settleNanos();
    if (forced) {
      selfTest.force(settledNanos);
    } else {
      selfTest.begin(settledNanos);
    }
    stage = forced ? Stage.FORCED : Stage.UNFORCED;
    stageEndNanos = settledNanos + AVERAGED * driver.periodNanos();
    dueNanos = Math.min(stageEndNanos, nowNanos + driver.longestDrainNanos());
    return outcome;
  }

  private ChipOutcome average(long nowNanos) {
    ChipOutcome outcome = driver.drain(nowNanos, selfTest);
    if (!outcome.ok()) {
      return outcome;
    }
    if (nowNanos < stageEndNanos) {
      dueNanos = Math.min(stageEndNanos, nowNanos + driver.longestDrainNanos());
      return outcome;
    }
    if (stage == Stage.UNFORCED) {
      return startTest(true, nowNanos);
    }
    verdict = selfTest.judge(driver.selfTestLimits());
    return finish();
  }

  private ChipOutcome finish() {
    stage = Stage.DONE;
    return driver.configure();
  }
}
