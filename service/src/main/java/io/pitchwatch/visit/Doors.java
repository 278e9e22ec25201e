package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.DoorReport;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.floor.FloorState;
import java.util.ArrayList;
import java.util.List;

/** What the doors do; worked out anew only when the floor leans otherwise than before. */
final class Doors {

  /** A twentieth of what the smoothest hinge holds; less changes no door. */
  private static final double SAME_RAD = Math.toRadians(0.02);

  private final Coach coach;
  private Lean lean = new Lean(Double.NaN, Double.NaN);
  private List<DoorReport> reports = List.of();

  Doors(Coach coach) {
    this.coach = coach;
  }

  /** One for each door; none while the floor moves or is not known. */
  List<DoorReport> round(FloorReading floor) {
    Lean now = floor.lean();
    if (floor.state() == FloorState.MOVING
        || floor.state() == FloorState.UNKNOWN
        || !now.isKnown()) {
      lean = new Lean(Double.NaN, Double.NaN);
      reports = List.of();
    } else if (!isLike(now)) {
      lean = now;
      reports = reports(UpVector.of(now));
    }
    return reports;
  }

  private boolean isLike(Lean now) {
    return Math.abs(now.rollRad() - lean.rollRad()) < SAME_RAD
        && Math.abs(now.pitchRad() - lean.pitchRad()) < SAME_RAD;
  }

  private List<DoorReport> reports(UpVector up) {
    List<DoorReport> all = new ArrayList<>(coach.doors().size());
    coach.doors().forEach(door -> all.add(DoorReport.of(door, up)));
    return List.copyOf(all);
  }
}
