package io.pitchwatch.levelling;

import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.LengthText;
import io.pitchwatch.coach.Units;
import io.pitchwatch.coach.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The one line that a driver acts on. */
public final class Headline {

  private final Plan plan;
  private final Units units;

  private Headline(Plan plan) {
    this.plan = plan;
    this.units = plan.site().coach().units();
  }

  /** The line, such as "Right side up 50 mm: 1 block + 1 sheet under each wheel". */
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
    boolean steadies = !plan.jacks().isEmpty() && NextStep.jacksOnlySteady(plan);
    if (!plan.jacks().isEmpty() && !steadies) {
      parts.add(jacks());
    }
    if (parts.isEmpty()) {
      String contact = steadies ? ", jacks to contact only" : "";
      return plan.verdict() == PlanVerdict.GOOD
          ? "Level enough as it stands: nothing to lay" + contact
          : "Nothing on board brings this floor nearer to level" + better();
    }
    if (steadies) {
      parts.add("jacks to contact only");
    }
    String joined = String.join("; then ", parts);
    String text = Character.toUpperCase(joined.charAt(0)) + joined.substring(1);
    String best =
        plan.wheels().proven() ? " (the best there is here)" : " (the best that was found)";
    return plan.verdict() == PlanVerdict.GOOD ? text : text + best;
  }

  private String better() {
    return plan.reasons().stream()
        .filter(reason -> reason.code().equals("heading") || reason.code().equals("missing-piece"))
        .findFirst()
        .map(reason -> "; " + reason.text())
        .orElse("");
  }

  /** What lies under the wheels, the side that goes up first. */
  private String wheels() {
    boolean left = tallestMm(Direction.LEFT) > tallestMm(Direction.RIGHT);
    Direction high = left ? Direction.LEFT : Direction.RIGHT;
    Direction other = left ? Direction.RIGHT : Direction.LEFT;
    String text = up() + ": " + side(high);
    if (!side(other).isEmpty()) {
      text +=
          side(other).equals(side(high))
              ? ", on both sides"
              : "; " + Words.of(other) + ": " + side(other);
    }
    boolean steps = plan.wheels().wheels().stream().anyMatch(wheel -> !wheel.stair().isEmpty());
    return steps ? text + "; steps in front" : text;
  }

  /** The stacks of one side, front to back; one for all where they are alike. */
  private String side(Direction side) {
    List<WheelStack> stacks =
        plan.wheels().wheels().stream().filter(wheel -> wheel.side() == side).toList();
    long kinds = stacks.stream().map(Headline::pieces).distinct().count();
    if (kinds == 1 && stacks.size() == plan.site().coach().axles().size() && stacks.size() > 1) {
      return pieces(stacks.get(0)) + " under each wheel";
    }
    return String.join(
        ", ", stacks.stream().map(stack -> stack.axle() + " " + pieces(stack)).toList());
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
    return String.join(" + ", words);
  }

  /** The pair that goes up furthest; the others only make contact. */
  private String jacks() {
    JackMove most =
        plan.jacks().stream().max(Comparator.comparingDouble(JackMove::raiseMm)).orElseThrow();
    return most.pair() + " jacks +" + LengthText.of(most.raiseMm(), units);
  }
}
