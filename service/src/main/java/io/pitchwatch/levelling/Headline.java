package io.pitchwatch.levelling;

import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The one line that a driver acts on. */
public final class Headline {

  private final Plan plan;
  private final Units units;

  private Headline(Plan plan) {
    this.plan = plan;
    this.units = plan.site().coach().units();
  }

  /** The line, such as "Right side up 48 mm: 1 block, 1 sheet under each right wheel". */
  public static String of(Plan plan) {
    return new Headline(plan).text();
  }

  private String text() {
    if (plan.verdict() == PlanVerdict.MOVE) {
      return "No safe plan here: " + plan.reasons().get(0).text() + better();
    }
    List<String> parts = new ArrayList<>();
    if (!plan.wheels().wheels().isEmpty()) {
      parts.add(wheels());
    }
    if (!plan.jacks().isEmpty()) {
      parts.add(jacks());
    }
    if (parts.isEmpty()) {
      return plan.verdict() == PlanVerdict.GOOD
          ? "Level enough as it stands: nothing to lay"
          : "Nothing on board brings this floor nearer to level" + better();
    }
    String text = String.join("; then ", parts);
    return plan.verdict() == PlanVerdict.GOOD ? text : text + " (the best there is here)";
  }

  private String better() {
    return plan.reasons().stream()
        .filter(reason -> reason.code().equals("heading") || reason.code().equals("missing-piece"))
        .findFirst()
        .map(reason -> "; " + reason.text())
        .orElse("");
  }

  /** What lies under the wheels, wheels with the same stack named together. */
  private String wheels() {
    Map<String, List<WheelStack>> alike = new LinkedHashMap<>();
    for (WheelStack wheel : plan.wheels().wheels()) {
      alike.computeIfAbsent(pieces(wheel), p -> new ArrayList<>()).add(wheel);
    }
    List<String> parts = new ArrayList<>();
    alike.forEach((pieces, wheels) -> parts.add(pieces + " under " + places(wheels)));
    return up() + ": " + String.join(", ", parts);
  }

  private String up() {
    double left = tallestMm(Direction.LEFT);
    double right = tallestMm(Direction.RIGHT);
    if (Math.abs(left - right) < 0.5) {
      return "Up " + LengthText.of(left, units);
    }
    return left > right
        ? "Left side up " + LengthText.of(left, units)
        : "Right side up " + LengthText.of(right, units);
  }

  private double tallestMm(Direction side) {
    return plan.wheels().wheels().stream()
        .filter(wheel -> wheel.side() == side)
        .mapToDouble(WheelStack::liftMm)
        .max()
        .orElse(0);
  }

  private static String pieces(WheelStack wheel) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Layer layer : wheel.layers()) {
      counts.merge(layer.piece(), layer.abreast(), Integer::sum);
    }
    List<String> words = new ArrayList<>();
    counts.forEach((piece, count) -> words.add(count + " " + piece));
    String stair =
        wheel.stair().isEmpty()
            ? ""
            : wheel.stair().size() == 1
                ? " and a step in front"
                : " and " + wheel.stair().size() + " steps in front";
    return String.join(" + ", words) + stair;
  }

  private String places(List<WheelStack> wheels) {
    int axles = plan.site().coach().axles().size();
    Direction side = wheels.get(0).side();
    boolean oneSide = wheels.stream().allMatch(wheel -> wheel.side() == side);
    if (wheels.size() == 2 * axles) {
      return "every wheel";
    }
    if (oneSide && wheels.size() == axles && axles > 1) {
      return "each " + word(side) + " wheel";
    }
    List<String> places = new ArrayList<>();
    wheels.forEach(wheel -> places.add(wheel.axle() + " " + word(wheel.side())));
    return String.join(" and ", places);
  }

  private String jacks() {
    List<String> moves = new ArrayList<>();
    for (JackMove move : plan.jacks()) {
      moves.add(move.pair() + " jacks +" + LengthText.of(move.raiseMm(), units));
    }
    return String.join(", ", moves);
  }

  private static String word(Direction side) {
    return side.name().toLowerCase(Locale.ROOT);
  }
}
