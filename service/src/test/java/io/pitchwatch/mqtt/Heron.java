package io.pitchwatch.mqtt;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.coach.Units;
import io.pitchwatch.comfort.DoorReport;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Layer;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.settling.GroundReport;
import io.pitchwatch.visit.Advice;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Installation;
import io.pitchwatch.visit.Laid;
import io.pitchwatch.visit.Laid.Wheel;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Planned;
import io.pitchwatch.visit.Report;
import io.pitchwatch.visit.Report.AlertReport;
import io.pitchwatch.visit.Report.FridgeReport;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.SensorSight;
import io.pitchwatch.visit.SiteReport;
import java.util.List;
import java.util.Optional;

/** The coach of the examples, and what it may have to say. */
public final class Heron {

  /** Two axles, two kinds of piece, one fridge. */
  public static final Coach COACH =
      new Coach(
          "heron",
          Units.METRIC,
          List.of(
              new Axle("front", 0, 1960, 3600, 90, 245, 1, false, false),
              new Axle("rear", -5600, 1830, 6900, 80, 590, 1, true, true)),
          List.of(),
          List.of(
              new Piece("block", PieceKind.BLOCK, 38, 380, 300, 10, 4500),
              new Piece("sheet", PieceKind.SHEET, 12, 600, 600, 4, 4500)),
          List.of(),
          new Levelling(
              40, 160, Math.toRadians(0.3), 12, Math.toRadians(1.5), Math.toRadians(0.5), 0.004),
          List.of(new Fridge("galley", Math.toRadians(3), Math.toRadians(6), Optional.empty())),
          List.of(
              new Door(
                  "washroom",
                  Direction.LEFT,
                  Direction.REAR,
                  Math.toRadians(100),
                  Math.toRadians(0.4),
                  560)));

  /** What to do where it arrives. */
  public static final Planned PLANNED =
      Planned.of(new Site(COACH, Lean.ofDegrees(2.1, 0.4), Surface.GRAVEL, Stay.STAY));

  /** The device of the examples. */
  public static final Device DEVICE = new Device(COACH, List.of("floor"), "0.1.0");

  private Heron() {}

  /** Parked, leaning so much, all well, read just now. */
  public static Report parked(double rollDeg, double pitchDeg) {
    return report(rollDeg, pitchDeg, Phase.PARKED, FloorState.STEADY, System.nanoTime());
  }

  /** A report of all that there is. */
  public static Report report(
      double rollDeg, double pitchDeg, Phase phase, FloorState state, long takenAtNanos) {
    Lean lean = Lean.ofDegrees(rollDeg, pitchDeg);
    double marginDeg = Math.min(3 - Math.abs(rollDeg), 6 - Math.abs(pitchDeg));
    return new Report(
        takenAtNanos,
        new FloorReading(
            state, lean, lean, Math.toRadians(0.004), Math.toRadians(0.09), takenAtNanos),
        marginDeg >= 0 ? Verdict.GOOD : Verdict.OUTSIDE,
        List.of(new FridgeReport("galley", Math.toRadians(marginDeg), marginDeg >= 0 ? 0 : 12)),
        List.of(
            new SensorReport(
                "floor", Health.GOOD, "", 21.5, Math.toRadians(0.09), SensorSight.NONE)),
        Stay.STAY,
        Surface.GRAVEL,
        phase,
        Laid.NOTHING,
        GroundReport.UNKNOWN,
        COACH.doors().stream().map(door -> DoorReport.of(door, UpVector.of(lean))).toList(),
        new Advice(Optional.of(PLANNED), "Lay the pieces"),
        List.of(),
        Installation.PLAIN,
        SiteReport.UNNAMED);
  }

  /** The same, told at another time. */
  public static Report at(Report report, long atNanos) {
    return copy(report, atNanos, report.floor(), report.laid(), report.alerts());
  }

  /** The same on other pieces. */
  public static Report with(Report report, Laid laid) {
    return copy(report, report.atNanos(), report.floor(), laid, report.alerts());
  }

  /** The same with alerts. */
  public static Report with(Report report, AlertReport... alerts) {
    return copy(report, report.atNanos(), report.floor(), report.laid(), List.of(alerts));
  }

  /** The same, less sure of the floor. */
  public static Report uncertain(Report report, double uncertaintyDeg) {
    FloorReading floor = report.floor();
    FloorReading unsure =
        new FloorReading(
            floor.state(),
            floor.live(),
            floor.steady(),
            Math.toRadians(uncertaintyDeg),
            floor.noiseRad(),
            floor.takenAtNanos());
    return copy(report, report.atNanos(), unsure, report.laid(), report.alerts());
  }

  private static Report copy(
      Report report, long atNanos, FloorReading floor, Laid laid, List<AlertReport> alerts) {
    return new Report(
        atNanos,
        floor,
        report.verdict(),
        report.fridges(),
        report.sensors(),
        report.stay(),
        report.surface(),
        report.phase(),
        laid,
        report.ground(),
        report.doors(),
        report.advice(),
        alerts,
        report.installation(),
        report.site());
  }

  /** A sheet and two blocks under the right rear wheels, two more in front of them. */
  public static Laid laid() {
    List<Layer> blocks = List.of(new Layer("block", 2));
    return new Laid(
        List.of(
            new Wheel(
                "rear",
                Direction.RIGHT,
                List.of(new Layer("sheet", 1), new Layer("block", 2)),
                List.of(blocks))));
  }
}
