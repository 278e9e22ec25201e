package io.pitchwatch.settling;

import java.util.SplittableRandom;

/**
 * A coach at a site, minute by minute, as a cheap sensor sees it: people, wind, sun, slide-outs,
 * jacks, a water tank, the seating of the first hours, the sensor's drift with warmth, its own
 * wandering and noise, and perhaps a wheel that sinks.
 *
 * <p>It knows nothing of the model of the filter it is to try: steps, storms and the sun's course
 * are none of its Gaussian processes. Figures are ours where nothing else is said.
 */
final class ParkedCoach {

  private static final double MINUTES_PER_DAY = 1440;
  private static final double NOISE_DEG = 0.0015;
  private static final double WANDER_DEG = 0.004;
  private static final double QUIET_SPREAD_DEG = 0.012;

  private final SplittableRandom random;
  private final Crew crew;
  private final Sky sky;
  private final boolean thermometer;
  private final Sinking sinking;
  private final double startHour;
  private final double baseRollDeg;
  private final double basePitchDeg;
  private final double rollPerC;
  private final double pitchPerC;
  private final double perC2;
  private final double slideRollDeg;
  private final double slidesPerDay;
  private final double tankRollDeg;
  private final double tankPerMinute;
  private final double seatDeg;
  private double tank = 1;
  private boolean slideOut;
  private double jackRollDeg;
  private double jackPitchDeg;
  private double wanderDeg;
  private double rollDeg;
  private double pitchDeg;
  private long minute;

  ParkedCoach(long seed, boolean thermometer, Sinking sinking) {
    random = new SplittableRandom(seed);
    crew = new Crew(random.split());
    sky = new Sky(random.split());
    this.thermometer = thermometer;
    this.sinking = sinking;
    startHour = random.nextDouble(8, 22);
    // A third of the coaches stand for the night as they came.
    double worst = random.nextInt(3) == 0 ? 1.5 : 0.5;
    baseRollDeg = random.nextDouble(-worst, worst);
    basePitchDeg = random.nextDouble(-worst, worst);
    // ADXL345: 0 g offset against temperature typically ±0.4 mg/°C (datasheet, from memory).
    rollPerC = 0.023 * random.nextGaussian();
    pitchPerC = 0.023 * random.nextGaussian();
    perC2 = 0.0003 * random.nextGaussian();
    slideRollDeg = random.nextDouble(0.1, 0.35) * (random.nextBoolean() ? 1 : -1);
    slidesPerDay = random.nextDouble(3);
    tankRollDeg = 0.04 * random.nextGaussian();
    tankPerMinute = 1 / (random.nextDouble(2, 6) * MINUTES_PER_DAY);
    seatDeg = 0.03 * random.nextGaussian();
  }

  /** The next minute, as the filter of the floor would tell it. */
  MinuteValue next() {
    minute++;
    double hour = (startHour + minute / 60.0) % 24;
    boolean day = hour > 7 && hour < 22.5;
    crew.minute(day);
    sky.minute(hour);
    double shaken = gear(day);
    double windRoll = sky.windRollDeg() * crew.softness();
    stand(hour, windRoll);
    double rock = Math.hypot(shaken, Math.hypot(0.35 * windRoll, 0.02 * crew.stepping()));
    double spread = Math.hypot(rock, QUIET_SPREAD_DEG);
    double rest = Math.max(0.3, 1 - 0.2 * crew.stepping());
    double warmer = sky.sensorC() - 18;
    double drift = perC2 * warmer * warmer;
    wanderDeg += -wanderDeg / 400 + WANDER_DEG * Math.sqrt(2 / 400.0) * random.nextGaussian();
    double noise = Math.hypot(NOISE_DEG, 0.1 * rock);
    return new MinuteValue(
        minute * Minutes.MINUTE_NANOS,
        Math.toRadians(
            rollDeg + rollPerC * warmer + drift + wanderDeg + noise * random.nextGaussian()),
        Math.toRadians(
            pitchDeg + pitchPerC * warmer - drift - wanderDeg + noise * random.nextGaussian()),
        Math.toRadians(spread / Math.sqrt(60 * rest)),
        Math.toRadians(spread),
        thermometer ? sky.sensorC() + 0.1 * random.nextGaussian() : Double.NaN,
        rest,
        shaken > 0.09);
  }

  /** Slide-outs, jacks and the tank; how much they shake the coach, degrees. */
  private double gear(boolean day) {
    tank -= tankPerMinute;
    if (tank < 0.1 && random.nextDouble() < 1 / 120.0) {
      tank = 1;
    }
    double shaken = 0;
    if (day && random.nextDouble() < slidesPerDay / MINUTES_PER_DAY) {
      slideOut = !slideOut;
      shaken = 0.05;
    }
    if (random.nextDouble() < 1 / (12 * MINUTES_PER_DAY)) {
      jackRollDeg = 0.3 * random.nextGaussian();
      jackPitchDeg = 0.3 * random.nextGaussian();
      shaken = random.nextBoolean() ? 0.1 : 0.08;
    }
    return shaken;
  }

  private void stand(double hour, double windRollDeg) {
    double seat = seatDeg * Math.log10(1 + minute / 5.0);
    rollDeg =
        baseRollDeg
            + crew.rollDeg()
            + windRollDeg
            + sky.sunRollDeg(hour)
            + tank * tankRollDeg
            + (slideOut ? slideRollDeg : 0)
            + jackRollDeg
            + seat
            + sinking.rollDeg((double) minute);
    pitchDeg =
        basePitchDeg
            + crew.pitchDeg()
            + sky.windPitchDeg() * crew.softness()
            + 0.3 * sky.sunRollDeg(hour)
            + 0.5 * tank * tankRollDeg
            + jackPitchDeg
            + 0.5 * seat
            + sinking.pitchDeg((double) minute);
  }

  /** What the sensor's warmth adds to roll, degrees, at so many degrees Celsius. */
  double rollDriftDeg(double sensorC) {
    return (rollPerC + perC2 * (sensorC - 18)) * (sensorC - 18);
  }

  /** What the sensor's warmth adds to pitch, degrees, at so many degrees Celsius. */
  double pitchDriftDeg(double sensorC) {
    return (pitchPerC - perC2 * (sensorC - 18)) * (sensorC - 18);
  }

  /** True roll at the end of the last minute, degrees. */
  double rollDeg() {
    return rollDeg;
  }

  /** True pitch at the end of the last minute, degrees. */
  double pitchDeg() {
    return pitchDeg;
  }
}
