package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.comfort.Judgement;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorReading;
import io.pitchwatch.visit.Report.FridgeReport;
import io.pitchwatch.visit.Report.SensorReport;
import io.pitchwatch.visit.VisitEvent.FloorRead;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps watch over one coach: turns what the sensors say and what the owner says into the report of
 * all that is known. Not thread-safe; time is passed in.
 */
public final class Watchkeeper {

  private final Coach coach;
  private final List<FridgeWatch> fridges = new ArrayList<>();
  private VisitState state;

  /**
   * A watch that goes on from where an earlier one left.
   *
   * @param coach the coach
   * @param state where the visit stands
   */
  public Watchkeeper(Coach coach, VisitState state) {
    this.coach = coach;
    this.state = state;
    coach.fridges().forEach(fridge -> fridges.add(new FridgeWatch(fridge)));
  }

  /** Where the visit stands. */
  public VisitState state() {
    return state;
  }

  /**
   * Takes what happened.
   *
   * @param nowNanos monotonic time, not before that of the call before
   */
  public void on(VisitEvent event, long nowNanos) {
    state = Visit.on(state, event, nowNanos);
  }

  /**
   * One round: what is known now.
   *
   * @param floor the floor as the believed sensor reads it
   * @param sensors one for each sensor
   * @param nowNanos monotonic time, not before that of the round before
   */
  public Report round(FloorReading floor, List<SensorReport> sensors, long nowNanos) {
    on(new FloorRead(floor.state()), nowNanos);
    Lean lean = floor.lean();
    List<FridgeReport> fridgeReports = new ArrayList<>(fridges.size());
    for (FridgeWatch fridge : fridges) {
      fridge.accept(lean, state.phase() == Phase.UNDER_WAY, nowNanos);
      fridgeReports.add(
          new FridgeReport(fridge.fridge().id(), fridge.marginRad(), fridge.outsideMinutes()));
    }
    Verdict verdict =
        Judgement.of(
            floor.state(), lean, coach.levelling().toleranceRad(state.stay()), coach.fridges());
    return new Report(
        nowNanos,
        floor,
        verdict,
        fridgeReports,
        sensors,
        state.stay(),
        state.surface(),
        state.phase(),
        state.laid(),
        List.of());
  }
}
