package io.pitchwatch.levelling;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.coach.AngleText;
import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.Units;
import io.pitchwatch.coach.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plan as text for people, in the owner's units, every stack drawn from the ground up. */
public final class PlanText {

  private final Plan plan;
  private final Coach coach;
  private final Units units;
  private final StringBuilder text = new StringBuilder();

  private PlanText(Plan plan) {
    this.plan = plan;
    this.coach = plan.site().coach();
    this.units = coach.units();
  }

  /** The text, lines ended by a line feed. */
  public static String of(Plan plan) {
    return new PlanText(plan).write();
  }

  private String write() {
    line(Headline.of(plan));
    line("");
    line("Now:           " + lean(plan.site().lean()));
    if (!plan.wheels().wheels().isEmpty()) {
      line("On the stacks: " + lean(plan.wheels().after()));
    }
    if (!plan.jacks().isEmpty()) {
      line("On the jacks:  " + lean(plan.after()));
    }
    line("Verdict:       " + plan.verdict().word().replace('-', ' '));
    plan.reasons().forEach(reason -> line("  - " + reason.text()));
    if (!plan.wheels().wheels().isEmpty()) {
      wheels();
    }
    if (!plan.jacks().isEmpty()) {
      jacks();
    }
    alternatives();
    line("");
    line("Before anyone goes near:");
    Cautions.ALL.forEach(caution -> line("  ! " + caution));
    return text.toString();
  }

  private void wheels() {
    line("");
    line(
        "Under the wheels, drawn from the ground up; twist "
            + AngleText.of(plan.wheels().twistRad(), 2));
    for (Axle axle : coach.axles()) {
      for (Direction side : List.of(Direction.LEFT, Direction.RIGHT)) {
        plan.wheels().wheels().stream()
            .filter(wheel -> wheel.axle().equals(axle.id()) && wheel.side() == side)
            .forEach(this::wheel);
      }
    }
    climb();
    line("");
    line("To carry out:");
    for (Piece piece : coach.pieces()) {
      int used = plan.wheels().piecesOf(piece.id());
      if (used > 0) {
        line("  " + used + " of " + piece.count() + " " + piece.id());
      }
    }
  }

  /** How hard the tallest climb is pulled. */
  private void climb() {
    double tallestMm = 0;
    for (WheelStack wheel : plan.wheels().wheels()) {
      double fromMm = 0;
      for (List<Layer> step : wheel.stair()) {
        tallestMm = Math.max(tallestMm, heightMm(step) - fromMm);
        fromMm = heightMm(step);
      }
      tallestMm = Math.max(tallestMm, wheel.liftMm() - fromMm);
    }
    line("");
    line(
        String.format(
            Locale.ROOT,
            "The tallest climb, %s, pulls with %.0f %% of the wheel's load (wheel radius %s, common"
                + " practice).",
            length(tallestMm),
            100 * StepPull.share(tallestMm, StepPull.USUAL_RADIUS_MM),
            length(StepPull.USUAL_RADIUS_MM)));
  }

  private void wheel(WheelStack wheel) {
    line("");
    line("  " + wheel.axle() + " " + Words.of(wheel.side()) + ", up " + length(wheel.liftMm()));
    List<String> rows = stack(wheel.layers());
    for (int i = rows.size() - 1; i >= 0; i--) {
      line("    " + rows.get(i));
    }
    line("    " + "=".repeat(rows.get(0).length()) + " ground");
    for (int i = 0; i < wheel.stair().size(); i++) {
      List<Layer> step = wheel.stair().get(i);
      line("    step " + (i + 1) + " in front, " + length(heightMm(step)) + ": " + layers(step));
    }
  }

  private List<String> stack(List<Layer> layers) {
    List<String> rows = new ArrayList<>();
    for (Layer layer : layers) {
      Piece piece = piece(layer.piece());
      String row =
          String.format(Locale.ROOT, "[ %-16s %9s ]", layer.piece(), length(piece.thicknessMm()));
      rows.add(row + (layer.abreast() > 1 ? " x" + layer.abreast() + " abreast" : ""));
    }
    return rows;
  }

  private String layers(List<Layer> layers) {
    List<String> words = new ArrayList<>();
    layers.forEach(l -> words.add(l.abreast() > 1 ? l.abreast() + " " + l.piece() : l.piece()));
    return String.join(" + ", words);
  }

  private double heightMm(List<Layer> layers) {
    return layers.stream().mapToDouble(layer -> piece(layer.piece()).thicknessMm()).sum();
  }

  private Piece piece(String id) {
    return coach.piece(id).orElseThrow();
  }

  private void jacks() {
    line("");
    line("Jacks, in this order: all pairs just past contact, then the low end up");
    for (JackMove move : plan.jacks()) {
      line(
          "  %d. %s pair: %s past contact; pads left %s, right %s; travel left %s, right %s"
              .formatted(
                  move.order(),
                  move.pair(),
                  length(move.raiseMm()),
                  pads(move.leftPads(), move.padMm().left()),
                  pads(move.rightPads(), move.padMm().right()),
                  length(move.travelMm().left()),
                  length(move.travelMm().right())));
    }
  }

  private String pads(List<PadPile> piles, double heightMm) {
    if (piles.isEmpty()) {
      return "none";
    }
    List<String> words = new ArrayList<>();
    piles.forEach(pile -> words.add(pile.count() + " " + pile.pad()));
    return String.join(" + ", words) + " (" + length(heightMm) + ")";
  }

  private void alternatives() {
    for (Plan.Alternative other : plan.alternatives()) {
      line("");
      line("Or without " + other.without() + ": " + Headline.of(other.plan()));
    }
  }

  private static String lean(Lean lean) {
    return LeanText.of(lean, 2);
  }

  private String length(double mm) {
    return LengthText.of(mm, units);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
