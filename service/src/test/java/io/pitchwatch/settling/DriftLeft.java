package io.pitchwatch.settling;

import io.pitchwatch.attitude.TemperatureDrift;
import java.util.List;

/** What is left of the drift of simulated sensors once it was learnt, beside what is stated. */
final class DriftLeft {

  /** Zeroed an hour after parking. */
  private static final int ZERO_MINUTE = 60;

  /** Temperatures at which it is looked at, evenly from the coldest to the warmest seen. */
  private static final int PLACES = 5;

  private static final double TYPICAL_RAD = Math.toRadians(0.023);

  private double before2;
  private double after2;
  private double stated2;
  private int covered;
  private int count;

  /** Lets one coach stand for so many days. */
  void add(long seed, int days) {
    ParkedCoach coach = new ParkedCoach(seed, true, Sinking.NONE);
    GroundWatch watch =
        new GroundWatch(
            GroundModel.withThermometer(TYPICAL_RAD),
            List.of(new LeanLimit("fridge", Math.toRadians(3), Math.toRadians(6))),
            Math.toRadians(0.5));
    double zeroC = Double.NaN;
    for (int minute = 0; minute < days * 1440; minute++) {
      MinuteValue value = coach.next();
      watch.accept(value);
      zeroC = minute == ZERO_MINUTE ? value.temperatureC() : zeroC;
    }
    TemperatureDrift drift = watch.drift();
    for (int i = 0; i < PLACES; i++) {
      double atC = drift.lowC() + i * (drift.highC() - drift.lowC()) / (PLACES - 1);
      double statedDeg = Math.toDegrees(drift.errorRad(zeroC, atC, TYPICAL_RAD));
      double rollDeg = coach.rollDriftDeg(atC) - coach.rollDriftDeg(zeroC);
      double pitchDeg = coach.pitchDriftDeg(atC) - coach.pitchDriftDeg(zeroC);
      double warmer = Math.toDegrees(atC - zeroC);
      look(rollDeg, rollDeg - drift.perC().y() * warmer, statedDeg);
      look(pitchDeg, pitchDeg + drift.perC().x() * warmer, statedDeg);
    }
  }

  private void look(double beforeDeg, double afterDeg, double statedDeg) {
    before2 += beforeDeg * beforeDeg;
    after2 += afterDeg * afterDeg;
    stated2 += statedDeg * statedDeg;
    covered += Math.abs(afterDeg) <= 2 * statedDeg ? 1 : 0;
    count++;
  }

  double beforeDeg() {
    return Math.sqrt(before2 / count);
  }

  double afterDeg() {
    return Math.sqrt(after2 / count);
  }

  double statedDeg() {
    return Math.sqrt(stated2 / count);
  }

  double coverage() {
    return (double) covered / count;
  }
}
