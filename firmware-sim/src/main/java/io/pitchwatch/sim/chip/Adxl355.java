package io.pitchwatch.sim.chip;

import java.util.Arrays;
import java.util.function.LongSupplier;

/**
 * An ADXL355 three-axis accelerometer as a register file; transcribed from its datasheet ("Register
 * map" and "Register definitions") and the names in Linux' drivers/iio/accel/adxl355_core.c.
 *
 * <p>It samples on its own clock; samples that fell due are computed when the bus next talks to it,
 * at most 33 of them. Activity detection and external synchronisation keep their registers but do
 * nothing. Reading FIFO_DATA leaves the pointer where it is; elsewhere it moves on.
 */
public final class Adxl355 implements RegisterFile, Chip {

  /** Bus address with ASEL low. */
  public static final int ADDRESS = 0x1D;

  /** Bus address with ASEL high. */
  public static final int ALTERNATE_ADDRESS = 0x53;

  private static final int STATUS = 0x04;
  private static final int FIFO_ENTRIES = 0x05;
  private static final int TEMP2 = 0x06;
  private static final int TEMP1 = 0x07;
  private static final int XDATA3 = 0x08;
  private static final int ZDATA1 = 0x10;
  private static final int FIFO_DATA = 0x11;
  private static final int OFFSET_X_H = 0x1E;
  private static final int FILTER = 0x28;
  private static final int FIFO_SAMPLES = 0x29;
  private static final int RANGE = 0x2C;
  private static final int POWER_CTL = 0x2D;
  private static final int SELF_TEST = 0x2E;
  private static final int RESET = 0x2F;
  private static final int SHADOW = 0x50;
  private static final int REGISTERS = 0x80;

  private static final int RESET_CODE = 0x52;
  private static final int STANDBY = 0x01;
  private static final int TEMP_OFF = 0x02;
  private static final int SELF_TEST_FORCED = 0x03;
  private static final int NVM_BUSY = 0x10;
  private static final int FIFO_OVR = 0x04;
  private static final int FIFO_FULL = 0x02;
  private static final int DATA_RDY = 0x01;

  /** Calibration of one part, as a reset restores it. */
  private static final int[] SHADOW_WORDS = {0x4C, 0x91, 0x3E, 0x07, 0xB8};

  private static final double FASTEST_HZ = 4000;
  private static final int SLOWEST_CODE = 10;
  private static final double FINEST_PER_G = 256_000;
  private static final int FULL_SCALE = 1 << 19;
  private static final double NANOS_PER_SECOND = 1e9;
  private static final double TURN_ON_NANOS = 10e6;
  private static final long RESET_NANOS = 5_000_000L;
  private static final double TEMPERATURE_STEPS_PER_K = -9.05;
  private static final int STEPS_AT_25_C = 1885;

  /** Corner of the high-pass as a share of the rate, 1e-4, by its code (datasheet, "Filter"). */
  private static final double[] HIGH_PASS = {0, 24.7, 6.2084, 1.5545, 0.3862, 0.0954, 0.0238, 0};

  private static final int KEPT = Adxl355Fifo.PLACES / 3 + 1;

  private final int[] registers = new int[REGISTERS];
  private final Adxl355Fifo fifo = new Adxl355Fifo();
  private final SensingElement element;
  private final Flaws flaws;
  private final SampleClock clock;
  private final LongSupplier nowNanos;
  private final double[] sampleG = new double[3];
  private final double[] slowG = new double[3];
  private final int[] words = new int[3];
  private Band band = Band.quarter(FASTEST_HZ);
  private int temperature = STEPS_AT_25_C;
  private boolean fresh;
  private long busyUntilNanos;

  /**
   * A chip that has just been powered.
   *
   * @param part how this piece differs from the ideal
   * @param surroundings what it feels
   * @param flaws what may go wrong in it
   * @param nowNanos scenario time, nanoseconds, never going back
   * @param seed of its noise
   */
  public Adxl355(
      Part part, Surroundings surroundings, Flaws flaws, LongSupplier nowNanos, long seed) {
    this.element = new SensingElement(part, surroundings, flaws, seed);
    this.flaws = flaws;
    this.clock = new SampleClock(part.clockPpm());
    this.nowNanos = nowNanos;
    reset();
  }

  @Override
  public RegisterPointer onBus() {
    return new RegisterPointer(this);
  }

  @Override
  public void powerCycle() {
    reset();
  }

  private void reset() {
    Arrays.fill(registers, 0);
    registers[0x00] = 0xAD;
    registers[0x01] = 0x1D;
    registers[0x02] = 0xED;
    registers[0x03] = 0x01;
    registers[FIFO_SAMPLES] = 0x60;
    registers[RANGE] = 0x81;
    registers[POWER_CTL] = STANDBY;
    System.arraycopy(SHADOW_WORDS, 0, registers, SHADOW, SHADOW_WORDS.length);
    fifo.clear();
    fresh = false;
    clock.stop();
    band = Band.quarter(rateHz());
    busyUntilNanos = nowNanos.getAsLong() + RESET_NANOS;
  }

  @Override
  public void transferBegins() {
    fifo.align();
    long now = nowNanos.getAsLong();
    for (int left = clock.dueOfNewest(KEPT, now); left > 0; left--) {
      sample(clock.take());
    }
    if ((registers[POWER_CTL] & (STANDBY | TEMP_OFF)) == 0) {
      double warmerK = element.temperatureC(now) - 25;
      temperature = (int) Math.round(STEPS_AT_25_C + TEMPERATURE_STEPS_PER_K * warmerK);
    }
  }

  @Override
  public int readRegister(int address) {
    if (address >= XDATA3 && address <= ZDATA1) {
      int word = words[(address - XDATA3) / 3] << 4;
      return word >> (8 * (2 - (address - XDATA3) % 3)) & 0xff;
    }
    return switch (address) {
      case STATUS -> status();
      case FIFO_ENTRIES -> fifo.entries();
      case TEMP2 -> temperature >> 8 & 0x0f;
      case TEMP1 -> temperature & 0xff;
      case FIFO_DATA -> fifo.read();
      case RESET -> 0;
      default -> address < REGISTERS ? registers[address] : 0;
    };
  }

  /** Reading clears what tells of new or lost data (datasheet, "Status register"). */
  private int status() {
    int busy = nowNanos.getAsLong() < busyUntilNanos ? NVM_BUSY : 0;
    int full = fifo.entries() >= registers[FIFO_SAMPLES] ? FIFO_FULL : 0;
    int ready = fresh ? DATA_RDY : 0;
    fresh = false;
    return busy | (fifo.takeLost() ? FIFO_OVR : 0) | full | ready;
  }

  @Override
  public void writeRegister(int address, int value) {
    if (address == RESET && value == RESET_CODE) {
      reset();
    } else if (address >= OFFSET_X_H && address < RESET) {
      int before = registers[address];
      registers[address] = value & mask(address);
      if (address == POWER_CTL || (address == FILTER && before != registers[FILTER])) {
        restart(address == POWER_CTL && (before & STANDBY) == 0);
      }
    }
  }

  private void restart(boolean goesOn) {
    band = Band.quarter(rateHz());
    if ((registers[POWER_CTL] & STANDBY) != 0) {
      clock.stop();
    } else if (!goesOn) {
      double periodNanos = NANOS_PER_SECOND / rateHz();
      clock.start(nowNanos.getAsLong(), TURN_ON_NANOS + periodNanos, periodNanos);
    }
  }

  @Override
  public int following(int address) {
    return address == FIFO_DATA ? FIFO_DATA : (address + 1) % REGISTERS;
  }

  @Override
  public void transferEnds() {}

  private double rateHz() {
    return FASTEST_HZ / (1 << Math.min(SLOWEST_CODE, registers[FILTER] & 0x0f));
  }

  private void sample(long instant) {
    if (!flaws.isFrozen()) {
      boolean forced = (registers[SELF_TEST] & SELF_TEST_FORCED) == SELF_TEST_FORCED;
      element.sense(instant, band, 1, forced ? 1 : 0, sampleG);
      for (int axis = 0; axis < 3; axis++) {
        words[axis] = word(highPassed(axis), axis);
      }
    }
    fresh = true;
    fifo.push(words[0], words[1], words[2]);
  }

  private double highPassed(int axis) {
    double corner = 1e-4 * HIGH_PASS[registers[FILTER] >> 4 & 0x07];
    if (corner == 0) {
      slowG[axis] = sampleG[axis];
      return sampleG[axis];
    }
    slowG[axis] += (1 - Math.exp(-2 * Math.PI * corner)) * (sampleG[axis] - slowG[axis]);
    return sampleG[axis] - slowG[axis];
  }

  /** Range codes 1, 2, 3 for 2, 4, 8 g; an offset step counts for 16. */
  private int word(double forceG, int axis) {
    double perG = FINEST_PER_G / (1 << Math.max(0, (registers[RANGE] & 0x03) - 1));
    int high = OFFSET_X_H + 2 * axis;
    int offset = (short) (registers[high] << 8 | registers[high + 1]) << 4;
    long steps = Math.round(forceG * perG) + offset;
    return (int) Math.max(-FULL_SCALE, Math.min(FULL_SCALE - 1, steps));
  }

  /** Bits that exist; the others read as 0. */
  private static int mask(int address) {
    return switch (address) {
      case 0x24, POWER_CTL, 0x2B -> 0x07;
      case FILTER, FIFO_SAMPLES -> 0x7f;
      case RANGE -> 0xc3;
      case SELF_TEST -> 0x03;
      default -> 0xff;
    };
  }
}
