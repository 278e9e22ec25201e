package io.pitchwatch.settling;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * One detector over many coaches: false alarms on firm ground, and lead over the fridge's limit on
 * soft ground.
 *
 * @param name the detector
 * @param firmSeeds coaches of 90 days on firm ground
 * @param falseAlarms alarms raised there
 * @param sunk coaches on soft ground that reached the limit, 3 deg of roll or 6 deg of pitch
 * @param alerted those that were alerted before
 * @param inTime those alerted at least an hour before
 * @param leadHours of those alerted, sorted
 */
record SettlingStudy(
    String name,
    int firmSeeds,
    int falseAlarms,
    int sunk,
    int alerted,
    int inTime,
    List<Double> leadHours) {

  static final long FIRM_SEED = 1_000;
  static final long SOFT_SEED = 500_000;
  private static final int DAYS = 90;
  private static final int MINUTES_PER_DAY = 1440;
  private static final int LONGEST_HOURS = 200;

  static SettlingStudy of(
      String name, Supplier<Detector> detector, boolean thermometer, int firm, int soft) {
    int falseAlarms = 0;
    for (int i = 0; i < firm; i++) {
      falseAlarms += onFirmGround(detector.get(), FIRM_SEED + i, thermometer);
    }
    double[] leads = new double[soft];
    int sunk = 0;
    for (int i = 0; i < soft; i++) {
      double lead = onSoftGround(detector.get(), SOFT_SEED + i, thermometer);
      if (!Double.isNaN(lead)) {
        leads[sunk++] = lead;
      }
    }
    List<Double> alerted =
        Arrays.stream(leads, 0, sunk).filter(lead -> lead > 0).sorted().boxed().toList();
    int inTime = (int) alerted.stream().filter(lead -> lead >= 1).count();
    return new SettlingStudy(name, firm, falseAlarms, sunk, alerted.size(), inTime, alerted);
  }

  private static int onFirmGround(Detector detector, long seed, boolean thermometer) {
    ParkedCoach coach = new ParkedCoach(seed, thermometer, Sinking.NONE);
    int alarms = 0;
    boolean was = false;
    for (int i = 0; i < DAYS * MINUTES_PER_DAY; i++) {
      boolean is = detector.alarmed(coach.next());
      alarms += is && !was ? 1 : 0;
      was = is;
    }
    return alarms;
  }

  /** Hours from the alarm to the limit; 0 when there was none; NaN when the limit never came. */
  private static double onSoftGround(Detector detector, long seed, boolean thermometer) {
    SplittableRandom random = new SplittableRandom(~seed);
    long start = (long) (60 * Math.pow(10, random.nextDouble(0, 2.4)));
    double rate = 0.05 * Math.pow(10, random.nextDouble());
    double direction = random.nextDouble(2 * Math.PI);
    double slows = random.nextInt(3) == 0 ? random.nextDouble(20, 100) : Double.POSITIVE_INFINITY;
    ParkedCoach coach =
        new ParkedCoach(seed, thermometer, new Sinking(start, rate, direction, slows));
    long alarmAt = Long.MAX_VALUE;
    for (long i = 1; i < start + 60L * LONGEST_HOURS; i++) {
      boolean alarmed = detector.alarmed(coach.next());
      if (alarmed && i > start && alarmAt == Long.MAX_VALUE) {
        alarmAt = i;
      }
      if (Math.abs(coach.rollDeg()) > 3 || Math.abs(coach.pitchDeg()) > 6) {
        return i <= start ? Double.NaN : Math.max(0, (i - alarmAt) / 60.0);
      }
    }
    return Double.NaN;
  }

  double falseAlarmsPer90Days() {
    return falseAlarms / (double) firmSeeds;
  }

  double alertedShare() {
    return alerted / (double) sunk;
  }

  static String heading() {
    return "| detector | alerted before the limit | at least 1 h before | lead 1 % / 5 % / median"
        + " | false alarms in 90 days |\n|---|---|---|---|---|";
  }

  String row() {
    return String.format(
        Locale.ROOT,
        "| %s | %d of %d (%.1f %%) | %d | %.1f / %.1f / %.1f h | %.2f |",
        name,
        alerted,
        sunk,
        100 * alertedShare(),
        inTime,
        quantile(0.01),
        quantile(0.05),
        quantile(0.5),
        falseAlarmsPer90Days());
  }

  private double quantile(double share) {
    return leadHours.isEmpty() ? 0 : leadHours.get((int) (share * leadHours.size()));
  }
}
