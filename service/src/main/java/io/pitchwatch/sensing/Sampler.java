package io.pitchwatch.sensing;

import io.pitchwatch.visit.Health;

/**
 * Keeps one accelerometer sampling, whatever its bus does, and judges whether it can be believed.
 *
 * <p>It has no thread and no clock: call {@link #poll} when it asks to be called, from one thread.
 * A failed transaction is tried again soon; a third in a row, a chip found back at its reset values
 * or one that has gone quiet is identified and set up anew, ever more slowly up to once a second.
 */
public final class Sampler {

  /** Drains ten times a second keep up with a driver who creeps onto blocks. */
  public static final long LIVELY_NANOS = 100_000_000L;

  private static final long SECOND = 1_000_000_000L;
  private static final long HOUR = 3600 * SECOND;
  private static final int FAILURES_IN_A_ROW = 3;
  private static final int BROWN_OUTS_AN_HOUR = 3;
  private static final double DRIFT_TOLERATED = 0.06;
  private static final double FAILURES_TOLERATED = 0.1;
  private static final double FAILURE_WEIGHT = 0.02;

  private final AccelerometerDriver driver;
  private final Doubts doubts;
  private final BringUp bringUp;
  private final double nominalHz;
  private final Backoff backoff = new Backoff(SECOND / 50, SECOND);
  private final Backoff retest = new Backoff(60 * SECOND, HOUR);
  private final long[] brownOutAt = new long[BROWN_OUTS_AN_HOUR];

  private long drainNanos = LIVELY_NANOS;
  private boolean started;
  private long startedAt;
  private long setUpAt;
  private long retestAt;
  private int failures;
  private double failureShare;
  private String trouble = "";
  private long busErrors;
  private long brownOuts;
  private long setUps;
  private boolean retesting;

  /**
   * A sampler; touches nothing until the first poll.
   *
   * @param driver the chip
   * @param sink gets the samples, on the thread that polls
   */
  public Sampler(AccelerometerDriver driver, SampleSink sink) {
    this.driver = driver;
    this.nominalHz = 1e9 / driver.periodNanos();
    this.doubts = new Doubts(driver.facts(), nominalHz, sink);
    this.bringUp = new BringUp(driver);
  }

  /**
   * Sets how often samples are fetched; more often than asked where the chip cannot hold as many.
   *
   * @param periodNanos more than 0
   * @throws IllegalArgumentException if it is not
   */
  public void drainEvery(long periodNanos) {
    if (periodNanos <= 0) {
      throw new IllegalArgumentException(
          "periodNanos is " + periodNanos + "; it must be more than 0");
    }
    drainNanos = periodNanos;
  }

  /**
   * Does what is due.
   *
   * @param nowNanos host's monotonic time
   * @return when to call again, monotonic nanoseconds
   */
  public long poll(long nowNanos) {
    if (!started) {
      started = true;
      startedAt = nowNanos;
      bringUp.begin(true, nowNanos);
    }
    return bringUp.done() ? drain(nowNanos) : bringUp(nowNanos);
  }

  private long bringUp(long nowNanos) {
    ChipOutcome outcome = bringUp.step(nowNanos);
    if (!outcome.ok()) {
      note(outcome, nowNanos);
      return setUpAnew(nowNanos);
    }
    if (!bringUp.done()) {
      return bringUp.dueNanos();
    }
    setUps += retesting ? 0 : 1;
    retesting = false;
    setUpAt = nowNanos;
    retestAt = nowNanos + retest.next();
    // Twice, because a test force dies away: what is settled to a data sheet still leans here.
    doubts.restart(nowNanos + 2 * driver.settleNanos());
    return nextDrain(nowNanos);
  }

  private long drain(long nowNanos) {
    ChipOutcome outcome = driver.drain(nowNanos, doubts);
    if (!outcome.ok()) {
      note(outcome, nowNanos);
      failureShare += FAILURE_WEIGHT * (1 - failureShare);
      boolean again = outcome instanceof ChipOutcome.OffBus && ++failures < FAILURES_IN_A_ROW;
      return again ? nowNanos + backoff.next() : setUpAnew(nowNanos);
    }
    failures = 0;
    failureShare -= FAILURE_WEIGHT * failureShare;
    if (quiet(nowNanos) && nowNanos - setUpAt > 2 * patienceNanos()) {
      trouble = doubts.pinned() ? "all are at the end of its range" : "the chip takes none";
      return setUpAnew(nowNanos);
    }
    if (wantsTest() && nowNanos > retestAt && doubts.still()) {
      retesting = true;
      bringUp.begin(true, nowNanos);
      return nowNanos;
    }
    return nextDrain(nowNanos);
  }

  private long nextDrain(long nowNanos) {
    if (!quiet(nowNanos)) {
      backoff.reset();
      trouble = "";
    }
    return nowNanos + Math.min(drainNanos, driver.longestDrainNanos());
  }

  private boolean wantsTest() {
    return selfTest() == SelfTest.Verdict.INCONCLUSIVE;
  }

  /** What the last self-test said. */
  SelfTest.Verdict selfTest() {
    return bringUp.verdict();
  }

  private long setUpAnew(long nowNanos) {
    long dueNanos = nowNanos + backoff.next();
    failures = 0;
    retesting = false;
    bringUp.begin(setUps == 0, dueNanos);
    return dueNanos;
  }

  private void note(ChipOutcome outcome, long nowNanos) {
    trouble = outcome.text();
    if (outcome instanceof ChipOutcome.OffBus) {
      busErrors++;
    }
    if (outcome == ChipOutcome.Plain.SETTINGS_LOST) {
      brownOutAt[(int) (brownOuts % BROWN_OUTS_AN_HOUR)] = nowNanos;
      brownOuts++;
    }
  }

  /** Longer than this without a sample is more than a hiccup, nanoseconds. */
  private long patienceNanos() {
    return SECOND + 20 * driver.periodNanos();
  }

  private long silentNanos(long nowNanos) {
    return nowNanos - (doubts.samples() == 0 ? startedAt : doubts.lastNanos());
  }

  private boolean quiet(long nowNanos) {
    return silentNanos(nowNanos) > patienceNanos();
  }

  /**
   * Whether the sensor can be believed now.
   *
   * @param nowNanos host's monotonic time
   */
  public SensorCondition condition(long nowNanos) {
    String failure = failure(nowNanos);
    String doubt = failure.isEmpty() ? doubt(nowNanos) : failure;
    Health health =
        !failure.isEmpty() ? Health.FAILED : doubt.isEmpty() ? Health.GOOD : Health.DOUBTFUL;
    return new SensorCondition(
        health,
        doubt,
        health == Health.FAILED ? Double.NaN : driver.temperatureC(),
        driver.rateHz(),
        started ? silentNanos(nowNanos) : 0,
        counts());
  }

  private SensorCondition.Counts counts() {
    return new SensorCondition.Counts(
        doubts.samples(),
        doubts.saturatedSamples(),
        doubts.spikes(),
        doubts.gaps(),
        busErrors,
        brownOuts,
        Math.max(0, setUps - 1));
  }

  private String failure(long nowNanos) {
    if (doubts.frozen()) {
      return "it repeats one value";
    }
    if (started && quiet(nowNanos)) {
      return trouble.isEmpty() ? "no samples" : "no samples: " + trouble;
    }
    return "";
  }

  private String doubt(long nowNanos) {
    if (doubts.samples() == 0) {
      return "no sample yet";
    }
    String said = doubts.doubt();
    if (!said.isEmpty()) {
      return said;
    }
    if (selfTest() == SelfTest.Verdict.FAILED) {
      return bringUp.fault();
    }
    boolean dips = brownOuts >= BROWN_OUTS_AN_HOUR;
    if (dips && nowNanos - brownOutAt[(int) (brownOuts % BROWN_OUTS_AN_HOUR)] < HOUR) {
      return "its supply dips again and again";
    }
    if (failureShare > FAILURES_TOLERATED) {
      return "its bus fails often";
    }
    boolean drifts = Math.abs(driver.rateHz() / nominalHz - 1) > DRIFT_TOLERATED;
    return drifts ? "its clock is off by more than 6 %" : "";
  }
}
