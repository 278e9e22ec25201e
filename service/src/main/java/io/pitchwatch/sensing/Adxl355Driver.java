package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl355Registers.*;

/**
 * Driver of the ADXL355 (Analog Devices ADXL354/ADXL355 data sheet, Rev. 0), on I2C at 0x1D or
 * 0x53.
 *
 * <p><b>Range.</b> ±2.048 g, for which offset, drift and noise are specified. <b>Rate.</b> 125 Hz,
 * low pass at 31.25 Hz: an engine idling at 24 to 33 Hz stays where it is, and what lies about the
 * multiples of 125 Hz, which alone could fold down to tilt's own band, falls into the zeros of the
 * decimation filter.
 *
 * <p><b>FIFO.</b> It always streams. One look is three transactions: the settings; status, number
 * of entries and temperature; then every sample in one read of FIFO_DATA, where the address does
 * not step on. Each word says whether it is an x and whether it is empty, so nothing that is not a
 * sample passes for one, not even after a reset in the middle.
 *
 * <p>The self-test has typical changes only (Table 2); half to twice of them is taken as right.
 */
public final class Adxl355Driver implements AccelerometerDriver {

  /** ±2 g, 125 Hz. */
  public static final AccelerometerSettings DEFAULTS = new AccelerometerSettings(2, 125);

  /** Figures of Table 2. Later revisions say 22.5 µg/√Hz. */
  public static final ChipFacts FACTS =
      new ChipFacts(
          "ADXL355",
          25e-6,
          25e-6,
          0.075,
          0.075,
          0.02e-3,
          0.02e-3,
          // From memory of its Allan deviation plot.
          10e-6,
          0.08,
          1 / LSB_PER_G,
          "Analog Devices ADXL354/ADXL355 data sheet, Rev. 0, Table 2");

  private static final SelfTestLimits LIMITS = new SelfTestLimits(0.15, 0.6, 0.15, 0.6, 0.75, 3.0);

  /** A jump of more than this, 11 °C, is believed only when seen twice. */
  private static final int TEMPERATURE_JUMP = 100;

  private final RegisterBus bus;
  private final int rateBits;
  private final int rangeBits;
  private final SampleClock clock;
  private final Adxl355Setup setup;
  private final ChipFacts facts;
  private final SampleBatch batch = new SampleBatch(FIFO_SETS);
  private final byte[] few = new byte[4];
  private final byte[] fifo = new byte[9 * FIFO_SETS];

  private SampleClock clockNow;
  private boolean overrun;
  private int temperature;
  private int temperatureSeen;
  private double temperatureC = Double.NaN;

  /**
   * A driver; touches nothing yet.
   *
   * @param bus the chip
   * @param wanted range 2, 4 or 8 g; rate 4000 Hz or any half, quarter… of it down to 3.9 Hz
   * @throws IllegalArgumentException if the chip does not know the range or rate
   */
  public Adxl355Driver(RegisterBus bus, AccelerometerSettings wanted) {
    this.bus = bus;
    this.rangeBits = 1 + Choice.of("rangeG", wanted.rangeG(), RANGES_G);
    this.rateBits = Choice.of("rateHz", wanted.rateHz(), RATES_HZ);
    this.clock = new SampleClock(1e9 / RATES_HZ[rateBits]);
    this.setup = new Adxl355Setup(bus, rateBits);
    this.facts = FACTS.withResolution(1 / lsbPerG(rangeBits));
    this.clockNow = clock;
  }

  @Override
  public ChipFacts facts() {
    return facts;
  }

  @Override
  public long periodNanos() {
    return (long) (1e9 / RATES_HZ[rateBits]);
  }

  /** The part is asked for only where the maker is right. */
  @Override
  public ChipOutcome identify() {
    ChipOutcome maker = Registers.identity(bus, "ADXL355", DEVID_AD, DEVID_AD_VALUE);
    return maker.ok() ? Registers.identity(bus, "ADXL355", PARTID, PARTID_VALUE) : maker;
  }

  @Override
  public ChipOutcome reset() {
    return ChipOutcome.of(bus.write(RESET, RESET_CODE));
  }

  /** Power-off to standby takes up to 10 ms (Table 2); Linux waits 5 ms after a reset. */
  @Override
  public long resetNanos() {
    return 15_000_000;
  }

  @Override
  public ChipOutcome configure() {
    return configure(rangeBits, 0, clock);
  }

  /**
   * "Self Test": the change that ST2 brings while ST1 is set. ±4 g leaves room for 1 g and the
   * change of z.
   */
  @Override
  public ChipOutcome configureSelfTest(boolean forced) {
    int bits = SELF_TEST_MODE | (forced ? SELF_TEST_FORCE : 0);
    return configure(RANGE_4_G, bits, new SampleClock(1e9 / RATES_HZ[rateBits]));
  }

  private ChipOutcome configure(int range, int selfTest, SampleClock newClock) {
    clockNow = newClock;
    clockNow.restart();
    batch.scale(lsbPerG(range), -(1 << 19), (1 << 19) - 1);
    return setup.write(range, selfTest);
  }

  private static double lsbPerG(int range) {
    return LSB_PER_G / (1 << (range - 1));
  }

  @Override
  public ChipOutcome drain(long nowNanos, SampleSink sink) {
    ChipOutcome outcome = setup.check();
    if (outcome.ok()) {
      outcome = ChipOutcome.of(bus.read(STATUS, few, 4));
    }
    if (outcome.ok()) {
      overrun = (few[0] & STATUS_FIFO_OVR) != 0;
      noteTemperature();
      outcome = collect((few[FIFO_ENTRIES - STATUS] & FIFO_ENTRIES_MASK) / 3);
    }
    if (outcome.ok()) {
      batch.deliver(clockNow, overrun, nowNanos, sink);
    } else {
      clockNow.restart();
    }
    return outcome;
  }

  private ChipOutcome collect(int sets) {
    batch.clear();
    int there = Math.min(sets, FIFO_SETS);
    BusOutcome read = there == 0 ? BusOutcome.Common.DONE : bus.read(FIFO_DATA, fifo, 9 * there);
    for (int at = 0; at < 9 * there && read.ok(); at += 9) {
      if (marks(at, WORD_EMPTY) != 0) {
        break;
      }
      if (marks(at, WORD_IS_X) != 1) {
        return new ChipOutcome.Disobeyed("the FIFO's words are out of step");
      }
      batch.add(signed20(fifo, at), signed20(fifo, at + 3), signed20(fifo, at + 6));
    }
    return ChipOutcome.of(read);
  }

  /** The marker in each of a set's three words, that of the first in the lowest bit. */
  private int marks(int at, int marker) {
    int marks = 0;
    for (int word = 0; word < 3; word++) {
      marks |= (fifo[at + 3 * word + 2] & marker) == 0 ? 0 : 1 << word;
    }
    return marks;
  }

  /** The two bytes are not latched together; one torn apart jumps by 28 °C. */
  private void noteTemperature() {
    int raw = (few[TEMP2 - STATUS] & 0x0F) << 8 | (few[TEMP2 - STATUS + 1] & 0xFF);
    boolean near = Math.abs(raw - temperature) <= TEMPERATURE_JUMP;
    if (raw != 0 && (near || Math.abs(raw - temperatureSeen) <= TEMPERATURE_JUMP)) {
      temperature = raw;
      temperatureC = Adxl355Registers.temperatureC(raw);
    }
    temperatureSeen = raw;
  }

  /** Turn-on takes up to 10 ms (Table 2), the decimation filter a few samples (Table 9). */
  @Override
  public long settleNanos() {
    return 10_000_000 + 5 * periodNanos();
  }

  @Override
  public SelfTestLimits selfTestLimits() {
    return LIMITS;
  }

  @Override
  public long longestDrainNanos() {
    return periodNanos() * FIFO_SETS * 3 / 4;
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
