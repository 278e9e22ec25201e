package io.pitchwatch.sim.chip;

import java.util.Arrays;
import java.util.function.LongSupplier;

/**
 * An ADXL345 three-axis accelerometer as a register file; transcribed from its datasheet (Rev. E,
 * "Register map", table 19, and "Register definitions").
 *
 * <p>It samples on its own clock; samples that fell due are computed when the bus next talks to it,
 * at most 66 of them however long that took. After a burst read of the data registers the pointer
 * goes on to FIFO_CTL; reading over their end, or stopping, takes the level out of the FIFO.
 *
 * <p>Tap, activity, inactivity and free-fall detection keep their registers but raise no event;
 * link and auto-sleep, which follow from activity, do nothing. At address 0x40 the pointer, whose
 * width the datasheet gives as six bits for SPI only, comes round to 0.
 */
public final class Adxl345 implements RegisterFile, Chip {

  /** Bus address with the ALT ADDRESS pin low. */
  public static final int ADDRESS = 0x53;

  /** Bus address with the ALT ADDRESS pin high. */
  public static final int ALTERNATE_ADDRESS = 0x1D;

  private static final int DEVID = 0x00;
  private static final int THRESH_TAP = 0x1D;
  private static final int OFSX = 0x1E;
  private static final int ACT_TAP_STATUS = 0x2B;
  private static final int BW_RATE = 0x2C;
  private static final int POWER_CTL = 0x2D;
  private static final int INT_ENABLE = 0x2E;
  private static final int INT_MAP = 0x2F;
  private static final int INT_SOURCE = 0x30;
  private static final int DATA_FORMAT = 0x31;
  private static final int DATAX0 = 0x32;
  private static final int DATAZ1 = 0x37;
  private static final int FIFO_CTL = 0x38;
  private static final int FIFO_STATUS = 0x39;
  private static final int REGISTERS = 0x40;

  private static final int DEVICE_ID = 0xE5;
  private static final int LOW_POWER = 0x10;
  private static final int MEASURE = 0x08;
  private static final int SLEEP = 0x04;
  private static final int SELF_TEST = 0x80;
  private static final int TRIGGER_PIN = 0x20;
  private static final int DATA_READY = 0x80;
  private static final int WATERMARK = 0x02;
  private static final int OVERRUN = 0x01;
  private static final int RESET_BW_RATE = 0x0A;

  private static final double LOWEST_RATE_HZ = 0.09765625;
  private static final double NANOS_PER_SECOND = 1e9;
  private static final double TURN_ON_NANOS = 1.1e6;

  /** "Somewhat higher noise", the datasheet says and gives no figure; this one is ours. */
  private static final double LOW_POWER_NOISE = Math.sqrt(2);

  private static final int BURST = Adxl345Fifo.LEVELS + 1;

  private final int[] registers = new int[REGISTERS];
  private final Adxl345Fifo fifo = new Adxl345Fifo();
  private final SensingElement element;
  private final Flaws flaws;
  private final SampleClock clock;
  private final LongSupplier nowNanos;
  private final double[] sampleG = new double[3];
  private Band band = Band.half(LOWEST_RATE_HZ);
  private double selfTest;
  private boolean dataRead;

  /**
   * A chip that has just been powered.
   *
   * @param part how this piece differs from the ideal
   * @param surroundings what it feels
   * @param flaws what may go wrong in it
   * @param nowNanos scenario time, nanoseconds, never going back
   * @param seed of its noise
   */
  public Adxl345(
      Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed) {
    this.element = new SensingElement(part, surroundings, flaws, seed);
    this.flaws = flaws;
    this.clock = new SampleClock(part.clockPpm());
    this.nowNanos = nowNanos;
    powerCycle();
  }

  @Override
  public RegisterPointer onBus() {
    return new RegisterPointer(this);
  }

  @Override
  public void powerCycle() {
    Arrays.fill(registers, 0);
    registers[DEVID] = DEVICE_ID;
    registers[BW_RATE] = RESET_BW_RATE;
    band = Band.half(rateHz());
    clock.stop();
    fifo.clear();
    selfTest = 0;
    dataRead = false;
  }

  @Override
  public void transferBegins() {
    catchUp(nowNanos.getAsLong());
  }

  @Override
  public int readRegister(int address) {
    if (address >= DATAX0 && address <= DATAZ1) {
      dataRead = true;
      int word = fifo.word((address - DATAX0) / 2);
      return (address - DATAX0) % 2 == 0 ? word & 0xff : word >> 8 & 0xff;
    }
    return switch (address) {
      case INT_SOURCE -> interrupts();
      case FIFO_STATUS -> fifo.entries() | (fifo.isTriggered() ? 0x80 : 0);
      default -> address < REGISTERS ? registers[address] : 0;
    };
  }

  @Override
  public void writeRegister(int address, int value) {
    if (!isWritable(address)) {
      return;
    }
    int before = registers[address];
    registers[address] = value & mask(address);
    switch (address) {
      case FIFO_CTL -> fifo.configure(value);
      case BW_RATE -> {
        if (before != registers[address]) {
          band = Band.half(rateHz());
          restart(0);
        }
      }
      case POWER_CTL -> power(isSampling(before), isSampling(registers[address]));
      default -> {}
    }
  }

  @Override
  public int following(int address) {
    if (address == DATAZ1 && dataRead) {
      finishRead();
    }
    return (address + 1) % REGISTERS;
  }

  @Override
  public void transferEnds() {
    if (dataRead) {
      finishRead();
    }
  }

  private void finishRead() {
    dataRead = false;
    fifo.pop();
  }

  private static boolean isSampling(int power) {
    return (power & MEASURE) != 0 && (power & SLEEP) == 0;
  }

  private void power(boolean before, boolean after) {
    if (after && !before) {
      restart(TURN_ON_NANOS);
    } else if (!after) {
      clock.stop();
    }
  }

  /** First sample after one period, and the turn-on time if the chip was off. */
  private void restart(double turnOnNanos) {
    if (isSampling(registers[POWER_CTL])) {
      double periodNanos = NANOS_PER_SECOND / rateHz();
      clock.start(nowNanos.getAsLong(), periodNanos + turnOnNanos, periodNanos);
    }
  }

  private double rateHz() {
    return LOWEST_RATE_HZ * (1 << (registers[BW_RATE] & 0x0f));
  }

  private void catchUp(long now) {
    long due = clock.due(now);
    if (due > 2 * BURST) {
      take(BURST);
      clock.skip(due - 2 * BURST);
      due = BURST;
    }
    take((int) due);
  }

  private void take(int samples) {
    for (int i = 0; i < samples; i++) {
      long instant = clock.take();
      if (fifo.accepts()) {
        sample(instant);
      }
      int triggers = registers[INT_ENABLE] & interrupts() & triggerPinMap();
      if (triggers != 0) {
        fifo.trigger();
      }
    }
  }

  private int triggerPinMap() {
    boolean second = (registers[FIFO_CTL] & TRIGGER_PIN) != 0;
    return second ? registers[INT_MAP] : ~registers[INT_MAP];
  }

  private void sample(long instant) {
    if (flaws.isFrozen()) {
      fifo.push(fifo.newest(0), fifo.newest(1), fifo.newest(2));
      return;
    }
    boolean lowPower = (registers[BW_RATE] & LOW_POWER) != 0;
    boolean testing = (registers[DATA_FORMAT] & SELF_TEST) != 0 && !lowPower;
    // The force settles over four periods (datasheet, "Self-test"): one pole of one period.
    selfTest += ((testing ? 1 : 0) - selfTest) * (1 - Math.exp(-1));
    element.sense(instant, band, lowPower ? LOW_POWER_NOISE : 1, selfTest, sampleG);
    int format = registers[DATA_FORMAT];
    fifo.push(
        Adxl345Word.of(sampleG[0], registers[OFSX], format),
        Adxl345Word.of(sampleG[1], registers[OFSX + 1], format),
        Adxl345Word.of(sampleG[2], registers[OFSX + 2], format));
  }

  private int interrupts() {
    return (fifo.dataReady() ? DATA_READY : 0)
        | (fifo.watermark() ? WATERMARK : 0)
        | (fifo.overrun() ? OVERRUN : 0);
  }

  private static boolean isWritable(int address) {
    return address >= THRESH_TAP
        && address <= FIFO_CTL
        && address != ACT_TAP_STATUS
        && address != INT_SOURCE
        && (address < DATAX0 || address > DATAZ1);
  }

  /** Bits that exist; the others read as 0. */
  private static int mask(int address) {
    return switch (address) {
      case 0x2A -> 0x0f;
      case BW_RATE -> 0x1f;
      case POWER_CTL -> 0x3f;
      case DATA_FORMAT -> 0xef;
      default -> 0xff;
    };
  }
}
