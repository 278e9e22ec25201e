package io.pitchwatch.sensing;

import static io.pitchwatch.sensing.Adxl345Registers.*;

/**
 * Driver of the ADXL345 (Analog Devices data sheet, Rev. E), on I2C at 0x53 or 0x1D.
 *
 * <p><b>Range.</b> ±2 g, in full resolution: gravity takes 1 g, an idling engine some 20 mg, so
 * there is room; a wider range gives no finer step (3.9 mg in all of them) and would hide the
 * saturation by which a blow is known. <b>Rate.</b> 100 Hz, bandwidth 50 Hz: an engine idling at 24
 * to 33 Hz is seen where it is and can be filtered; at 50 Hz or less it would fold down towards the
 * band of tilt, and faster rates load the bus to no use.
 *
 * <p><b>FIFO.</b> Stream mode; one look takes all that is there. This chip gives up one sample for
 * each burst of the six data registers ("each FIFO level is cleared after any read"), so a look is
 * as many bursts as samples plus three: BW_RATE to DATA_FORMAT, which proves that the chip still
 * has its settings and brings the overrun bit; FIFO_STATUS; and at the end POWER_CTL, which proves
 * that it was not reset meanwhile, for then the samples would be zeros. The 5 µs that the FIFO
 * needs after each burst pass by themselves on I2C ("Retrieving Data from FIFO"). Where the FIFO
 * stays empty the data registers are read sample by sample instead.
 *
 * <p>The chip has no thermometer, and no reset but its supply.
 */
public final class Adxl345Driver implements AccelerometerDriver {

  /** ±2 g, 100 Hz. */
  public static final AccelerometerSettings DEFAULTS = new AccelerometerSettings(2, 100);

  /** Figures of Table 1; noise from "Noise Performance", p. 33. */
  public static final ChipFacts FACTS =
      new ChipFacts(
          "ADXL345",
          290e-6,
          430e-6,
          0.150,
          0.250,
          0.4e-3,
          1.2e-3,
          // P. 33: averaging resolves about 100 µg at best.
          100e-6,
          0.10,
          1.0 / 256,
          "Analog Devices ADXL345 data sheet, Rev. E, Table 1 and p. 33");

  /**
   * The limits of Table 1 hold at a supply of 2.5 V; Table 14 scales them by 1.77 (x, y) and 1.47
   * (z) at 3.3 V. Boards have either, so these span both.
   */
  private static final SelfTestLimits LIMITS =
      new SelfTestLimits(0.20, 2.10 * 1.77, -2.10 * 1.77, -0.20, 0.30, 3.40 * 1.47);

  private static final int WATERMARK = 20;

  private final RegisterBus bus;
  private final int rateBits;
  private final int rangeBits;
  private final SampleClock clock;
  private final Adxl345Intake intake;
  private final byte[] settings = new byte[6];
  private final byte[] few = new byte[3];

  private int rateNow;
  private int formatNow;

  /**
   * A driver; touches nothing yet.
   *
   * @param bus the chip
   * @param wanted range 2, 4, 8 or 16 g; rate 3200 Hz or any half, quarter… of it down to 0.1 Hz
   * @throws IllegalArgumentException if the chip does not know the range or rate
   */
  public Adxl345Driver(RegisterBus bus, AccelerometerSettings wanted) {
    this.bus = bus;
    this.rangeBits = Choice.of("rangeG", wanted.rangeG(), RANGES_G);
    this.rateBits = Choice.of("rateHz", wanted.rateHz(), RATES_HZ);
    this.clock = new SampleClock(1e9 / RATES_HZ[rateBits]);
    this.intake = new Adxl345Intake(bus, clock);
    this.rateNow = rateBits;
  }

  @Override
  public ChipFacts facts() {
    return FACTS;
  }

  @Override
  public long periodNanos() {
    return (long) (1e9 / RATES_HZ[rateNow]);
  }

  @Override
  public ChipOutcome identify() {
    return Registers.identity(bus, "ADXL345", DEVID, DEVID_VALUE);
  }

  @Override
  public ChipOutcome reset() {
    return ChipOutcome.of(bus.write(POWER_CTL, POWER_STANDBY));
  }

  /** Standby takes effect at once; what matters is written afterwards. */
  @Override
  public long resetNanos() {
    return 0;
  }

  @Override
  public ChipOutcome configure() {
    return configure(rateBits, FORMAT_FULL_RES | rangeBits, clock);
  }

  /** "Using Self-Test": full resolution, ±16 g, 100 to 800 Hz, normal power. */
  @Override
  public ChipOutcome configureSelfTest(boolean forced) {
    int rate = rateBits >= RATE_100_HZ && rateBits <= RATE_800_HZ ? rateBits : RATE_100_HZ;
    int format = FORMAT_FULL_RES | FORMAT_16_G | (forced ? FORMAT_SELF_TEST : 0);
    return configure(rate, format, new SampleClock(1e9 / RATES_HZ[rate]));
  }

  private ChipOutcome configure(int rate, int format, SampleClock newClock) {
    rateNow = rate;
    formatNow = format;
    intake.begin(newClock, periodNanos(), RANGES_G[format & FORMAT_16_G]);
    int[] writes = {
      POWER_CTL,
      POWER_STANDBY,
      OFSX,
      0,
      OFSX + 1,
      0,
      OFSX + 2,
      0,
      INT_ENABLE,
      0,
      BW_RATE,
      rate,
      DATA_FORMAT,
      format,
      FIFO_CTL,
      FIFO_BYPASS, // clears the FIFO
      FIFO_CTL,
      FIFO_STREAM | WATERMARK,
      POWER_CTL,
      POWER_MEASURE
    };
    BusOutcome written = Registers.writeAll(bus, writes);
    return written.ok() ? verify() : ChipOutcome.of(written);
  }

  private ChipOutcome verify() {
    ChipOutcome zeros = Registers.zeros(bus, OFSX, few);
    ChipOutcome kept = zeros.ok() ? readSettings() : zeros;
    return kept == ChipOutcome.Plain.SETTINGS_LOST
        ? Registers.disobeyed(POWER_CTL, POWER_MEASURE, settings[POWER_CTL - BW_RATE])
        : kept;
  }

  private ChipOutcome readSettings() {
    BusOutcome read = bus.read(BW_RATE, settings, settings.length);
    if (!read.ok()) {
      return ChipOutcome.of(read);
    }
    int rate = settings[0] & 0xFF;
    int power = settings[POWER_CTL - BW_RATE] & 0xFF;
    int format = settings[DATA_FORMAT - BW_RATE] & 0xFF;
    if (power == POWER_STANDBY && format == 0 && rate == BW_RATE_RESET) {
      return ChipOutcome.Plain.SETTINGS_LOST;
    }
    int[] written = {POWER_CTL, POWER_MEASURE, DATA_FORMAT, formatNow, BW_RATE, rateNow};
    return Registers.hold(settings, BW_RATE, written);
  }

  @Override
  public ChipOutcome drain(long nowNanos, SampleSink sink) {
    ChipOutcome outcome = readSettings();
    if (outcome.ok()) {
      outcome = ChipOutcome.of(bus.read(FIFO_STATUS, few, 1));
    }
    if (outcome.ok()) {
      int interrupts = settings[INT_SOURCE - BW_RATE];
      outcome = ChipOutcome.of(intake.collect(interrupts, few[0], nowNanos));
    }
    if (outcome.ok()) {
      outcome = stillMeasuring();
    }
    if (outcome.ok()) {
      intake.deliver(nowNanos, sink);
    } else {
      intake.interrupt();
    }
    return outcome;
  }

  /** A chip that was reset among the bursts would have given zeros for samples. */
  private ChipOutcome stillMeasuring() {
    BusOutcome read = bus.read(POWER_CTL, few, 1);
    return read.ok() && (few[0] & 0xFF) != POWER_MEASURE
        ? ChipOutcome.Plain.SETTINGS_LOST
        : ChipOutcome.of(read);
  }

  /** Turn-on τ + 1.1 ms, then 4τ until a force that came or went has no effect (Table 1, notes). */
  @Override
  public long settleNanos() {
    return 5 * periodNanos() + 1_100_000;
  }

  @Override
  public SelfTestLimits selfTestLimits() {
    return LIMITS;
  }

  @Override
  public long longestDrainNanos() {
    return intake.longestDrainNanos();
  }

  @Override
  public double rateHz() {
    return clock.rateHz();
  }

  @Override
  public double temperatureC() {
    return Double.NaN;
  }
}
