package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl345Registers.*;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * How samples come out of an ADXL345: from its FIFO, or, where that stays empty, from its data
 * registers whenever it says that they are new, or else whenever they have changed.
 */
final class Adxl345Intake {

  private static final Logger LOG = LoggerFactory.getLogger(Adxl345Intake.class);

  /** So many periods without a sample, and another way is tried. */
  private static final int PATIENCE = 12;

  private enum Way {
    FIFO,
    WHEN_READY,
    WHEN_CHANGED
  }

  private final RegisterBus bus;
  private final byte[] data = new byte[6];
  private final int[] counts = new int[3 * FIFO_DEPTH];

  private SampleClock clock;
  private long periodNanos;
  private int limit;

  private Way way = Way.FIFO;
  private boolean fifoWorks;
  private boolean told;
  private boolean looked;
  private long fedNanos;
  private int waiting;
  private boolean gap;
  private int lastX;
  private int lastY;
  private int lastZ;

  Adxl345Intake(RegisterBus bus, SampleClock clock) {
    this.bus = bus;
    this.clock = clock;
  }

  /**
   * Starts anew after the chip was configured.
   *
   * @param clock times the samples
   * @param periodNanos nominal time between samples
   * @param rangeG full scale
   */
  void begin(SampleClock clock, long periodNanos, double rangeG) {
    this.clock = clock;
    this.periodNanos = periodNanos;
    this.limit = (int) (LSB_PER_G * rangeG);
    this.looked = false;
    clock.restart();
    if (fifoWorks) {
      way = Way.FIFO;
    }
  }

  /** Notes that samples to come do not follow on from those before. */
  void interrupt() {
    clock.restart();
  }

  /** Longest time between drains, nanoseconds; one sample's time where there is no FIFO. */
  long longestDrainNanos() {
    return way == Way.FIFO ? periodNanos * FIFO_DEPTH * 3 / 4 : periodNanos * 4 / 5;
  }

  /**
   * Reads what is there, to be handed on by {@link #deliver} once the chip is known to be well.
   *
   * @param interrupts INT_SOURCE as just read
   * @param fifoStatus FIFO_STATUS as just read
   * @param nowNanos host's monotonic time just before that
   */
  BusOutcome collect(int interrupts, int fifoStatus, long nowNanos) {
    int entries = Math.min(fifoStatus & FIFO_ENTRIES, FIFO_DEPTH);
    if (entries > 0) {
      fifoWorks = true;
      way = Way.FIFO;
    }
    if (!looked) {
      looked = true;
      fedNanos = nowNanos;
    }
    gap = way == Way.FIFO && fifoFull(entries, interrupts);
    waiting =
        switch (way) {
          case FIFO -> entries;
          case WHEN_READY -> (interrupts & INT_DATA_READY) == 0 ? 0 : 1;
          case WHEN_CHANGED -> 1;
        };
    BusOutcome read = readWaiting();
    if (!read.ok()) {
      interrupt();
    } else if (way == Way.WHEN_CHANGED) {
      waiting = changed() ? 1 : 0;
    } else if (waiting > 0) {
      fedNanos = nowNanos;
    } else if (nowNanos - fedNanos > PATIENCE * periodNanos) {
      tryAnotherWay(nowNanos);
    }
    return read;
  }

  private BusOutcome readWaiting() {
    BusOutcome read = BusOutcome.Common.DONE;
    for (int i = 0; i < waiting && read.ok(); i++) {
      read = bus.read(DATAX0, data, data.length);
      for (int axis = 0; axis < 3; axis++) {
        counts[3 * i + axis] = signed16(data, 2 * axis);
      }
    }
    return read;
  }

  /** "The overrun bit is set when FIFO is filled": samples were lost, or are about to be. */
  private static boolean fifoFull(int entries, int interrupts) {
    return entries >= FIFO_DEPTH || (interrupts & INT_OVERRUN) != 0;
  }

  private void tryAnotherWay(long nowNanos) {
    way = way == Way.FIFO ? Way.WHEN_READY : Way.WHEN_CHANGED;
    fedNanos = nowNanos;
    if (!told) {
      told = true;
      LOG.warn("the FIFO of the ADXL345 stays empty; reading its data registers one by one");
    }
  }

  private boolean changed() {
    boolean same = counts[0] == lastX && counts[1] == lastY && counts[2] == lastZ;
    lastX = counts[0];
    lastY = counts[1];
    lastZ = counts[2];
    return !same;
  }

  /** Hands on what was collected. */
  void deliver(long nowNanos, SampleSink sink) {
    if (gap || way == Way.WHEN_CHANGED) {
      clock.restart();
    }
    if (!clock.look(waiting, nowNanos) || gap) {
      sink.gap(nowNanos);
    }
    for (int i = 0; i < 3 * waiting; i += 3) {
      long nanos = clock.next();
      if (atEnd(counts[i]) || atEnd(counts[i + 1]) || atEnd(counts[i + 2])) {
        sink.saturated(nanos);
      } else {
        double perG = LSB_PER_G;
        sink.sample(nanos, counts[i] / perG, counts[i + 1] / perG, counts[i + 2] / perG);
      }
    }
  }

  private boolean atEnd(int counts) {
    return counts >= limit - 1 || counts <= -limit;
  }
}
