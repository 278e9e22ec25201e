package io.pitchwatch.levelling;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Piece;
import java.util.ArrayList;
import java.util.List;

/** Looks at a written plan as someone with a tape measure would: what is wrong with it, if any. */
final class PlanInspection {

  private final Site site;
  private final WheelPlan plan;
  private final List<String> faults = new ArrayList<>();

  private PlanInspection(Site site, WheelPlan plan) {
    this.site = site;
    this.plan = plan;
  }

  /** Each broken limit, and each figure that does not follow from the layers. */
  static List<String> faults(Site site, WheelPlan plan) {
    PlanInspection inspection = new PlanInspection(site, plan);
    plan.wheels().forEach(inspection::look);
    inspection.count();
    inspection.measure();
    return inspection.faults;
  }

  /** Height of the tallest stack, millimetres. */
  static double tallestMm(WheelPlan plan) {
    return plan.wheels().stream().mapToDouble(WheelStack::liftMm).max().orElse(0);
  }

  private void hold(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }

  private Axle axle(String id) {
    return site.coach().axles().stream().filter(a -> a.id().equals(id)).findFirst().orElseThrow();
  }

  private Piece piece(String id) {
    return site.coach().pieces().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }

  private void look(WheelStack wheel) {
    Axle axle = axle(wheel.axle());
    Levelling limits = site.coach().levelling();
    double heightMm = 0;
    for (Layer layer : wheel.layers()) {
      Piece piece = piece(layer.piece());
      heightMm += piece.thicknessMm();
      hold(layer.abreast() * piece.widthMm() >= axle.footprintMm() - 1e-6, "too narrow " + layer);
      hold(
          (layer.abreast() - 1) * piece.widthMm() < axle.footprintMm() - 1e-6, "too wide " + layer);
      hold(
          axle.loadKg() / 2 / layer.abreast() <= piece.maxLoadKg() * (1 + 1e-9),
          "overloaded " + layer);
    }
    hold(Math.abs(heightMm - wheel.liftMm()) < 1e-4, "height of " + wheel);
    hold(heightMm <= limits.stackMm() + 1e-6, "too tall " + wheel);
    double climbedMm = 0;
    for (List<Layer> step : wheel.stair()) {
      hold(step.equals(wheel.layers().subList(0, step.size())), "stair is no prefix " + wheel);
      climbedMm = climb(climbedMm, step, wheel);
    }
    climb(climbedMm, wheel.layers(), wheel);
  }

  private double climb(double fromMm, List<Layer> to, WheelStack wheel) {
    double toMm = to.stream().mapToDouble(layer -> piece(layer.piece()).thicknessMm()).sum();
    double climbMm = toMm - fromMm;
    hold(
        climbMm > 0 && climbMm <= site.coach().levelling().stepMm() + 1e-6,
        "climb of " + climbMm + " mm " + wheel);
    return toMm;
  }

  private void count() {
    for (Piece piece : site.coach().pieces()) {
      hold(plan.piecesOf(piece.id()) <= piece.count(), "more than on board of " + piece);
    }
    int pieces = site.coach().pieces().stream().mapToInt(p -> plan.piecesOf(p.id())).sum();
    hold(pieces == plan.pieces(), "counts " + plan.pieces() + " pieces and lays " + pieces);
  }

  private double liftMm(Axle axle, Direction side) {
    return plan.wheels().stream()
        .filter(wheel -> wheel.axle().equals(axle.id()) && wheel.side() == side)
        .mapToDouble(WheelStack::liftMm)
        .sum();
  }

  private void measure() {
    Coach coach = site.coach();
    double stiffness = coach.axles().stream().mapToDouble(Axle::stiffness).sum();
    double roll = site.lean().rollRad();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Axle axle : coach.axles()) {
      double liftMm = liftMm(axle, Direction.RIGHT) - liftMm(axle, Direction.LEFT);
      double turn = Math.atan(liftMm / axle.trackMm());
      roll -= axle.stiffness() / stiffness * turn;
      least = Math.min(least, turn);
      most = Math.max(most, turn);
    }
    hold(most - least <= coach.levelling().twistRad() + 1e-9, "twisted by " + (most - least));
    hold(Math.abs(most - least - plan.twistRad()) < 1e-9, "twist is " + (most - least));
    hold(Math.abs(roll - plan.after().rollRad()) < 1e-9, "roll after is " + roll);
    hold(Math.abs(pitch() - plan.after().pitchRad()) < 1e-9, "pitch after is " + pitch());
  }

  private double pitch() {
    List<Axle> axles = site.coach().axles();
    Axle front = axles.get(0);
    Axle rear = axles.get(axles.size() - 1);
    double upMm = liftMm(front, Direction.RIGHT) + liftMm(front, Direction.LEFT);
    double downMm = liftMm(rear, Direction.RIGHT) + liftMm(rear, Direction.LEFT);
    double baseMm = front.positionMm() - rear.positionMm();
    return site.lean().pitchRad() - (baseMm == 0 ? 0 : Math.atan((upMm - downMm) / 2 / baseMm));
  }
}
