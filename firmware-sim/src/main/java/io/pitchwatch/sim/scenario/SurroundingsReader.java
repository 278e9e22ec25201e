package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Chip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;

/** Reads the events that break something, and those that happen around the service. */
final class SurroundingsReader {

  /** What can happen. */
  static final List<String> VERBS =
      List.of("bus-fault", "stuck", "power-cut", "broker-down", "clock-jump");

  private static final List<String> KINDS = List.of("nak", "stuck", "frozen", "spike", "slow");
  private static final double SPIKE_SHARE = 0.02;
  private static final double SPIKE_G = 1.5;
  private static final double SLOW_S = 0.05;
  private static final double NANOS_PER_SECOND = 1e9;

  private final List<Switch> switches = new ArrayList<>();
  private final List<Due> due = new ArrayList<>();

  /** Reads one event. */
  void read(String does, double atS, Section event) {
    switch (does) {
      case "bus-fault" -> fault(event.choice("kind", "nak", KINDS), atS, event);
      case "stuck" -> {
        String what = event.choice("what", "bus", List.of("bus", "value"));
        fault(what.equals("bus") ? "stuck" : "frozen", atS, event);
      }
      case "clock-jump" -> {
        double byS = event.quantity("by", Dimension.TIME);
        note(new Due(atS, does, Map.of("by", seconds(byS))));
      }
      default -> {
        double lastsS = event.amount("lasts", Dimension.TIME, 0);
        note(new Due(atS, does, Map.of("lasts", seconds(lastsS))));
        if (does.equals("power-cut")) {
          // Board and sensor hang on the same supply.
          switches.add(
              new Switch(atS + lastsS, things -> things.supplied().forEach(Chip::powerCycle)));
        }
      }
    }
  }

  /** Notes something that happens around the service. */
  void note(Due happening) {
    due.add(happening);
  }

  private static String seconds(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private void fault(String kind, double atS, Section event) {
    double untilS = atS + event.amount("lasts", Dimension.TIME, Double.POSITIVE_INFINITY);
    BiConsumer<Breakables, Boolean> fault =
        switch (kind) {
          case "nak" -> {
            double share = event.number("share", 1, 0, 1);
            yield (things, on) -> things.buses().forEach(bus -> bus.nak(on ? share : 0));
          }
          case "stuck" -> (things, on) -> things.buses().forEach(bus -> bus.stuck(on));
          case "slow" -> {
            double byS = event.amount("by", Dimension.TIME, SLOW_S);
            long nanos = Math.round(Math.min(byS, 60) * NANOS_PER_SECOND);
            yield (things, on) -> things.buses().forEach(bus -> bus.slow(on ? nanos : 0));
          }
          case "frozen" -> (things, on) -> things.chips().forEach(chip -> chip.frozen(on));
          default -> {
            double share = event.number("share", SPIKE_SHARE, 0, 1);
            double sizeG = event.amount("size", Dimension.ACCELERATION, SPIKE_G);
            yield (things, on) ->
                things.chips().forEach(chip -> chip.spikes(on ? share : 0, sizeG));
          }
        };
    switches.add(new Switch(atS, things -> fault.accept(things, true)));
    if (Double.isFinite(untilS)) {
      switches.add(new Switch(untilS, things -> fault.accept(things, false)));
    }
  }

  /** Faults that come and go, in order of time. */
  List<Switch> switches() {
    return switches.stream().sorted(Comparator.comparingDouble(Switch::atS)).toList();
  }

  /** What happens around the service, in order of time. */
  List<Due> due() {
    return due.stream().sorted(Comparator.comparingDouble(Due::atS)).toList();
  }
}
