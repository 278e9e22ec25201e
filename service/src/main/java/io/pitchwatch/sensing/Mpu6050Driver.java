package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Mpu6050Registers.*;

/**
 * Driver of the accelerometer in an MPU-6050 (register map Rev. 4.2, product specification Rev.
 * 3.4), on I2C at 0x68 or 0x69.
 *
 * <p><b>Range.</b> ±2 g. <b>Rate.</b> 100 Hz behind the chip's low pass at 44 Hz: an engine idling
 * at 24 to 33 Hz stays where it is, its harmonics are kept from folding down. The clock is that of
 * the x gyroscope, as the register map recommends; it is steadier than the chip's own.
 *
 * <p><b>FIFO.</b> Holds 170 samples of the accelerometer alone; one look reads the count and then
 * all of them in one transaction. When it overflows it goes on with whole bytes, not samples, so a
 * nearly full one is emptied and the gap told.
 */
public final class Mpu6050Driver implements AccelerometerDriver {

  /** ±2 g, 100 Hz. */
  public static final AccelerometerSettings DEFAULTS = new AccelerometerSettings(2, 100);

  /** Section 6.2; drift is the change over 0 to 70 °C taken as a straight line. */
  public static final ChipFacts FACTS =
      new ChipFacts(
          "MPU-6050",
          400e-6,
          400e-6,
          0.050,
          0.080,
          0.035 / 70,
          0.060 / 70,
          // Not in the data sheet: one part over eleven minutes, docs/figures/accuracy.md.
          50e-6,
          0.03,
          1 / LSB_PER_G,
          "InvenSense PS-MPU-6000A-00, Rev. 3.4, section 6.2");

  private static final int BYTES = 6;
  private static final int MOST = FIFO_BYTES / BYTES;
  private static final int NEARLY_FULL = FIFO_BYTES - 4 * BYTES;
  private static final double TRIM_TOLERANCE = 0.14;

  private final RegisterBus bus;
  private final int rate;
  private final int rangeBits;
  private final SampleClock clock;
  private final Mpu6050Setup setup;
  private final ChipFacts facts;
  private final SampleBatch batch = new SampleBatch(MOST);
  private final byte[] few = new byte[4];
  private final byte[] fifo = new byte[MOST * BYTES];

  private SampleClock clockNow;
  private boolean lost;
  private double temperatureC = Double.NaN;
  private SelfTestLimits limits = limits(0, 0, 0);

  /**
   * A driver; touches nothing yet.
   *
   * @param bus the chip
   * @param wanted range 2, 4, 8 or 16 g; rate 1000, 500, 250, 200, 125, 100, 50 or 25 Hz
   * @throws IllegalArgumentException if the chip does not know the range or rate
   */
  public Mpu6050Driver(RegisterBus bus, AccelerometerSettings wanted) {
    this.bus = bus;
    this.rangeBits = Choice.of("rangeG", wanted.rangeG(), RANGES_G);
    this.rate = Choice.of("rateHz", wanted.rateHz(), RATES_HZ);
    this.clock = new SampleClock(1e9 / RATES_HZ[rate]);
    this.setup = new Mpu6050Setup(bus, rate);
    this.facts = FACTS.withResolution(1 / lsbPerG(rangeBits));
    this.clockNow = clock;
  }

  @Override
  public ChipFacts facts() {
    return facts;
  }

  @Override
  public long periodNanos() {
    return (long) (1e9 / RATES_HZ[rate]);
  }

  @Override
  public ChipOutcome identify() {
    return Registers.identity(bus, "MPU-6050", WHO_AM_I, WHO_AM_I_VALUE);
  }

  @Override
  public ChipOutcome reset() {
    return ChipOutcome.of(bus.write(PWR_MGMT_1, PWR_RESET));
  }

  @Override
  public long resetNanos() {
    return 100_000_000;
  }

  @Override
  public ChipOutcome configure() {
    return configure(rangeBits, 0, clock);
  }

  /** Registers 13 to 16: at ±8 g; the change is to be within 14 % of the factory's. */
  @Override
  public ChipOutcome configureSelfTest(boolean forced) {
    BusOutcome read = bus.read(SELF_TEST_X, few, 4);
    if (!read.ok()) {
      return ChipOutcome.of(read);
    }
    limits = limits(trim(0, 4), trim(1, 2), trim(2, 0));
    int force = forced ? ACCEL_SELF_TEST : 0;
    return configure(ACCEL_8_G, force, new SampleClock(1e9 / RATES_HZ[rate]));
  }

  /** The five bits of an axis' trim: three in its own register, two in SELF_TEST_A. */
  private int trim(int axis, int shift) {
    return (few[axis] & 0xE0) >> 3 | (few[3] >> shift & 0x03);
  }

  private static SelfTestLimits limits(int x, int y, int z) {
    return new SelfTestLimits(least(x), most(x), least(y), most(y), least(z), most(z));
  }

  /** A code of 0 says that the factory kept none; then any change that a code could tell. */
  private static double least(int code) {
    return factoryChangeG(code == 0 ? 1 : code) * (1 - TRIM_TOLERANCE);
  }

  private static double most(int code) {
    return factoryChangeG(code == 0 ? 31 : code) * (1 + TRIM_TOLERANCE);
  }

  private ChipOutcome configure(int range, int force, SampleClock newClock) {
    clockNow = newClock;
    clockNow.restart();
    batch.scale(lsbPerG(range), Short.MIN_VALUE, Short.MAX_VALUE);
    return setup.write(force | range << 3);
  }

  private static double lsbPerG(int range) {
    return LSB_PER_G / (1 << range);
  }

  /** Settings are read last: only if they still stand were the bytes samples. */
  @Override
  public ChipOutcome drain(long nowNanos, SampleSink sink) {
    BusOutcome read = bus.read(FIFO_COUNT_H, few, 2);
    if (read.ok()) {
      read = collect((few[0] & 0xFF) << 8 | (few[1] & 0xFF));
    }
    if (read.ok()) {
      read = bus.read(TEMP_OUT_H, few, 2);
    }
    double celsius = Mpu6050Registers.temperatureC(signed16(few, 0));
    ChipOutcome outcome = read.ok() ? setup.check() : ChipOutcome.of(read);
    if (outcome.ok()) {
      temperatureC = celsius;
      batch.deliver(clockNow, lost, nowNanos, sink);
    } else {
      clockNow.restart();
    }
    return outcome;
  }

  private BusOutcome collect(int bytes) {
    batch.clear();
    lost = bytes > NEARLY_FULL;
    if (lost) {
      return setup.emptyFifo();
    }
    int whole = bytes / BYTES * BYTES;
    BusOutcome read = whole == 0 ? BusOutcome.Common.DONE : bus.read(FIFO_R_W, fifo, whole);
    for (int at = 0; at < whole && read.ok(); at += BYTES) {
      batch.add(signed16(fifo, at), signed16(fifo, at + 2), signed16(fifo, at + 4));
    }
    return read;
  }

  /** Start-up takes 30 ms (section 6.1), the low pass some 5 ms; a reserve above both. */
  @Override
  public long settleNanos() {
    return 50_000_000 + 2 * periodNanos();
  }

  @Override
  public SelfTestLimits selfTestLimits() {
    return limits;
  }

  @Override
  public long longestDrainNanos() {
    return periodNanos() * MOST * 3 / 4;
  }

  @Override
  public double rateHz() {
    return clock.rateHz();
  }

  @Override
  public double temperatureC() {
    return temperatureC;
  }
}
