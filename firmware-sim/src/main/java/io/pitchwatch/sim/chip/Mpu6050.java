package io.pitchwatch.sim.chip;

import java.util.Arrays;
import java.util.function.LongSupplier;

/**
 * The accelerometer and thermometer of an MPU-6050 as a register file; transcribed from its
 * register map (RM-MPU-6000A-00 Rev. 4.2) and product specification (PS-MPU-6000A-00 Rev. 3.4).
 *
 * <p>It samples on its own clock; samples that fell due are computed when the bus next talks to it,
 * at most as many as its FIFO holds. The gyroscope reads as nothing turning. Cycle mode, motion
 * detection, the auxiliary bus and single axes on standby keep their registers but do nothing.
 * Reading FIFO_R_W leaves the pointer where it is; elsewhere it moves on.
 */
public final class Mpu6050 implements RegisterFile, Chip {

  /** Bus address with AD0 low. */
  public static final int ADDRESS = 0x68;

  /** Bus address with AD0 high. */
  public static final int ALTERNATE_ADDRESS = 0x69;

  private static final int SELF_TEST_X = 0x0D;
  private static final int SMPLRT_DIV = 0x19;
  private static final int CONFIG = 0x1A;
  private static final int ACCEL_CONFIG = 0x1C;
  private static final int FIFO_EN = 0x23;
  private static final int INT_ENABLE = 0x38;
  private static final int INT_STATUS = 0x3A;
  private static final int ACCEL_XOUT_H = 0x3B;
  private static final int GYRO_ZOUT_L = 0x48;
  private static final int USER_CTRL = 0x6A;
  private static final int PWR_MGMT_1 = 0x6B;
  private static final int PWR_MGMT_2 = 0x6C;
  private static final int FIFO_COUNTH = 0x72;
  private static final int FIFO_COUNTL = 0x73;
  private static final int FIFO_R_W = 0x74;
  private static final int WHO_AM_I = 0x75;
  private static final int REGISTERS = 0x80;

  private static final int DEVICE_RESET = 0x80;
  private static final int SLEEP = 0x40;
  private static final int TEMP_DIS = 0x08;
  private static final int USER_FIFO_EN = 0x40;
  private static final int USER_FIFO_RESET = 0x04;
  private static final int FIFO_OFLOW = 0x10;
  private static final int DATA_RDY = 0x01;

  private static final double FINEST_PER_G = 16384;
  private static final double INNER_HZ = 1000;
  private static final double UNFILTERED_HZ = 8000;
  private static final double NANOS_PER_SECOND = 1e9;
  private static final double TURN_ON_NANOS = 30e6;
  private static final double STEPS_PER_K = 340;
  private static final double ZERO_STEPS_C = 36.53;
  private static final double[] LOW_PASS_HZ = {260, 184, 94, 44, 21, 10, 5, 260};
  private static final int LEAST_SAMPLE_BYTES = 2;
  private static final int KEPT = Mpu6050Fifo.SIZE / LEAST_SAMPLE_BYTES + 2;

  private final int[] registers = new int[REGISTERS];
  private final Mpu6050Fifo fifo = new Mpu6050Fifo();
  private final SensingElement element;
  private final Flaws flaws;
  private final SampleClock clock;
  private final LongSupplier nowNanos;
  private final double[] sampleG = new double[3];

  /** What the data registers show: x, y, z, temperature. */
  private final short[] words = new short[4];

  private Band band = Band.onePole(LOW_PASS_HZ[0], INNER_HZ, UNFILTERED_HZ);
  private boolean fresh;

  /**
   * A chip that has just been powered: it sleeps.
   *
   * @param part how this piece differs from the ideal
   * @param surroundings what it feels
   * @param flaws what may go wrong in it
   * @param nowNanos scenario time, nanoseconds, never going back
   * @param seed of its noise
   */
  public Mpu6050(
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
    Arrays.fill(words, (short) 0);
    registers[PWR_MGMT_1] = SLEEP;
    registers[WHO_AM_I] = 0x68;
    for (int i = 0; i < Mpu6050Trim.REGISTERS; i++) {
      registers[SELF_TEST_X + i] = Mpu6050Trim.register(i);
    }
    fifo.clear();
    fresh = false;
    clock.stop();
    band = band();
  }

  @Override
  public void transferBegins() {
    for (int left = clock.dueOfNewest(KEPT, nowNanos.getAsLong()); left > 0; left--) {
      sample(clock.take());
    }
  }

  @Override
  public int readRegister(int address) {
    if (address >= ACCEL_XOUT_H && address <= GYRO_ZOUT_L) {
      int index = (address - ACCEL_XOUT_H) / 2;
      int word = index < words.length ? words[index] : 0;
      return (address - ACCEL_XOUT_H) % 2 == 0 ? word >> 8 & 0xff : word & 0xff;
    }
    return switch (address) {
      case INT_STATUS -> status();
      case FIFO_COUNTH -> fifo.count() >> 8;
      case FIFO_COUNTL -> fifo.count() & 0xff;
      case FIFO_R_W -> fifo.read();
      default -> address < REGISTERS ? registers[address] : 0;
    };
  }

  /** Set whether or not the interrupts are enabled; cleared by reading. */
  private int status() {
    int ready = fresh ? DATA_RDY : 0;
    fresh = false;
    return ready | (fifo.takeOverflowed() ? FIFO_OFLOW : 0);
  }

  @Override
  public void writeRegister(int address, int value) {
    switch (address) {
      case PWR_MGMT_1 -> power(value);
      case USER_CTRL -> {
        if ((value & USER_FIFO_RESET) != 0) {
          fifo.clear();
        }
        registers[USER_CTRL] = value & ~USER_FIFO_RESET & 0xf8;
      }
      case SMPLRT_DIV, CONFIG -> {
        int before = registers[address];
        registers[address] = value;
        if (before != value) {
          restart(0);
        }
      }
      case FIFO_R_W -> {}
      default -> {
        if (isWritable(address)) {
          registers[address] = value;
        }
      }
    }
  }

  private void power(int value) {
    if ((value & DEVICE_RESET) != 0) {
      reset();
      return;
    }
    boolean slept = (registers[PWR_MGMT_1] & SLEEP) != 0;
    registers[PWR_MGMT_1] = value & 0x6f;
    if ((value & SLEEP) != 0) {
      clock.stop();
    } else if (slept) {
      restart(TURN_ON_NANOS);
    }
  }

  private void restart(double turnOnNanos) {
    band = band();
    if ((registers[PWR_MGMT_1] & SLEEP) == 0) {
      double periodNanos = NANOS_PER_SECOND / rateHz();
      clock.start(nowNanos.getAsLong(), turnOnNanos + periodNanos, periodNanos);
    }
  }

  private int lowPass() {
    return registers[CONFIG] & 0x07;
  }

  private double rateHz() {
    boolean filtered = lowPass() != 0 && lowPass() != 7;
    return (filtered ? INNER_HZ : UNFILTERED_HZ) / (1 + registers[SMPLRT_DIV]);
  }

  private Band band() {
    return Band.onePole(LOW_PASS_HZ[lowPass()], INNER_HZ, Math.min(INNER_HZ, rateHz()));
  }

  @Override
  public int following(int address) {
    return address == FIFO_R_W ? FIFO_R_W : (address + 1) % REGISTERS;
  }

  @Override
  public void transferEnds() {}

  private void sample(long instant) {
    if (!flaws.isFrozen()) {
      element.sense(instant, band, 1, 0, sampleG);
      double perG = FINEST_PER_G / (1 << (registers[ACCEL_CONFIG] >> 3 & 3));
      for (int axis = 0; axis < 3; axis++) {
        double pushedG = (registers[ACCEL_CONFIG] & 0x80 >> axis) != 0 ? element.testG(axis) : 0;
        words[axis] = saturated((sampleG[axis] + pushedG) * perG);
      }
      if ((registers[PWR_MGMT_1] & TEMP_DIS) == 0) {
        words[3] = saturated((element.temperatureC(instant) - ZERO_STEPS_C) * STEPS_PER_K);
      }
    }
    fresh = true;
    if ((registers[USER_CTRL] & USER_FIFO_EN) != 0) {
      fill();
    }
  }

  /** Puts what FIFO_EN selects into the FIFO, in the order of its registers. */
  private void fill() {
    int selected = registers[FIFO_EN];
    for (int axis = 0; axis < 3 && (selected & 0x08) != 0; axis++) {
      fifo.push(words[axis]);
    }
    if ((selected & 0x80) != 0) {
      fifo.push(words[3]);
    }
    for (int gyro = 0x40; gyro >= 0x10; gyro >>= 1) {
      if ((selected & gyro) != 0) {
        fifo.push(0);
      }
    }
  }

  private static short saturated(double steps) {
    return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(steps)));
  }

  private static boolean isWritable(int address) {
    return (address >= SMPLRT_DIV && address <= INT_ENABLE)
        || (address >= 0x63 && address <= PWR_MGMT_2)
        || (address >= SELF_TEST_X && address < SELF_TEST_X + Mpu6050Trim.REGISTERS);
  }
}
