package io.pitchwatch.settling;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * Soft and firm ground over many coaches, the ground watch beside plain rivals; prints the table of
 * docs/figures/settling.md.
 *
 * <p>By default a few coaches; with {@code -Dpitchwatch.full=true} a thousand on soft ground and
 * five hundred of 90 days on firm ground, some minutes of one core. {@code
 * -Dpitchwatch.settling.firm} and {@code .soft} set the numbers.
 */
class SettlingSimulationTest {

  private static final boolean FULL = Boolean.getBoolean("pitchwatch.full");
  private static final int FIRM = Integer.getInteger("pitchwatch.settling.firm", FULL ? 500 : 12);
  private static final int SOFT = Integer.getInteger("pitchwatch.settling.soft", FULL ? 1000 : 40);

  private final List<String> rows = new ArrayList<>();

  private SettlingStudy study(String name, boolean thermometer, Supplier<Detector> detector) {
    SettlingStudy study = SettlingStudy.of(name, detector, thermometer, FIRM, SOFT);
    rows.add(study.row());
    return study;
  }

  @Test
  void softGroundIsToldInTimeAndFirmGroundIsNotMistakenForIt() {
    SettlingStudy with = study("ground watch, thermometer", true, () -> Detector.groundWatch(true));
    SettlingStudy without =
        study("ground watch, no thermometer", false, () -> Detector.groundWatch(false));
    study("threshold 0.5 deg", false, () -> new Detector.PlainThreshold(0.5));
    study("threshold 1 deg", false, () -> new Detector.PlainThreshold(1));
    study("line over 6 h, 0.05 deg/h", false, () -> new Detector.PlainFit(6, 0.05));
    study("line over 12 h, 0.05 deg/h", false, () -> new Detector.PlainFit(12, 0.05));
    String table = SettlingStudy.heading() + "\n" + String.join("\n", rows);
    System.out.println(table);
    for (SettlingStudy study : List.of(with, without)) {
      String seeds =
          "seeds from " + SettlingStudy.FIRM_SEED + " and " + SettlingStudy.SOFT_SEED + "\n";
      assertTrue(study.alertedShare() >= 0.99, seeds + table);
      assertTrue(study.inTime() >= 0.99 * study.sunk(), seeds + table);
      assertTrue(study.falseAlarmsPer90Days() <= 1, seeds + table);
    }
  }
}
