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
  private final SampleBatch batch = new SampleBatch(FIFO_DEPTH);

  private SampleClock clock;
  private long periodNanos;

  private Way way = Way.FIFO;
  private boolean fifoWorks;
  private boolean told;
  private boolean looked;
  private long fedNanos;

  /** The FIFO was full: in stream mode samples were lost, or would have been by now. */
  private boolean full;

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
    int limit = (int) (LSB_PER_G * rangeG);
    batch.scale(LSB_PER_G, -limit, limit - 1);
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
    full = way == Way.FIFO && entries >= FIFO_DEPTH;
    int waiting =
        switch (way) {
          case FIFO -> entries;
          case WHEN_READY -> (interrupts & INT_DATA_READY) == 0 ? 0 : 1;
          case WHEN_CHANGED -> 1;
        };
    BusOutcome read = read(waiting);
    if (!read.ok()) {
      interrupt();
    } else if (waiting > 0) {
      fedNanos = nowNanos;
    } else if (nowNanos - fedNanos > PATIENCE * periodNanos) {
      tryAnotherWay(nowNanos);
    }
    return read;
  }

  private BusOutcome read(int waiting) {
    batch.clear();
    BusOutcome read = BusOutcome.Common.DONE;
    for (int i = 0; i < waiting && read.ok(); i++) {
      read = bus.read(DATAX0, data, data.length);
      int x = signed16(data, 0);
      int y = signed16(data, 2);
      int z = signed16(data, 4);
      if (way != Way.WHEN_CHANGED || x != lastX || y != lastY || z != lastZ) {
        batch.add(x, y, z);
      }
      lastX = x;
      lastY = y;
      lastZ = z;
    }
    return read;
  }

  private void tryAnotherWay(long nowNanos) {
    way = way == Way.FIFO ? Way.WHEN_READY : Way.WHEN_CHANGED;
    fedNanos = nowNanos;
    if (!told) {
      told = true;
      LOG.warn("the FIFO of the ADXL345 stays empty; reading its data registers one by one");
    }
  }

  /** Hands on what was collected. */
  void deliver(long nowNanos, SampleSink sink) {
    if (way == Way.WHEN_CHANGED) {
      clock.restart();
    }
    batch.deliver(clock, full, nowNanos, sink);
  }
}
