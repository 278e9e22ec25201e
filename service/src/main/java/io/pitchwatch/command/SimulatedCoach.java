package io.pitchwatch.command;

import io.pitchwatch.bus.Pi4jBus;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * The simulated coach as a rehearsal sees it: buses, a clock to turn, questions to ask. It is known
 * through Pi4J and the JDK's types alone.
 */
final class SimulatedCoach implements AutoCloseable {

  private static final double NANOS_PER_SECOND = 1e9;

  private final Pi4jBus buses;
  private final LongConsumer clock;
  private final Function<String, String> questions;

  private SimulatedCoach(Pi4jBus buses, LongConsumer clock, Function<String, String> questions) {
    this.buses = buses;
    this.clock = clock;
    this.questions = questions;
  }

  /** What came of asking for one. */
  sealed interface Opening {

    /** It stands at the scenario's beginning. */
    record Opened(SimulatedCoach coach) implements Opening {}

    /** What is wrong with the scenario, for people. */
    record Refused(String why) implements Opening {}
  }

  /** The coach of a scenario file. */
  @SuppressWarnings({"rawtypes", "unchecked"}) // a face is asked for by its class
  static Opening open(Path scenario) {
    Pi4jBus buses = BusChoice.simulated(scenario.toString()).open();
    Optional<LongConsumer> clock = buses.face(LongConsumer.class);
    Optional<Function> questions = buses.face(Function.class);
    if (clock.isEmpty() || questions.isEmpty()) {
      buses.close();
      return new Opening.Refused("the simulated coach is not part of this installation");
    }
    SimulatedCoach coach = new SimulatedCoach(buses, clock.get(), questions.get());
    String refusal = coach.ask("refusal");
    if (!refusal.isEmpty()) {
      coach.close();
      return new Opening.Refused(refusal.replaceFirst("^error ", ""));
    }
    coach.turnTo(0);
    return new Opening.Opened(coach);
  }

  Pi4jBus buses() {
    return buses;
  }

  /** Lets scenario time be so many nanoseconds since its beginning; never back. */
  void turnTo(long nanos) {
    clock.accept(nanos);
  }

  /**
   * Something that happens around the service.
   *
   * @param does which kind
   * @param words its parameters
   */
  record Due(String does, Map<String, String> words) {

    /** Copies the map. */
    Due {
      words = Map.copyOf(words);
    }

    /** A parameter; empty if it has none of that name. */
    String word(String name) {
      return words.getOrDefault(name, "");
    }

    /** A parameter that is a number. */
    double number(String name) {
      return Double.parseDouble(words.getOrDefault(name, "0"));
    }
  }

  /** What fell due around the service since the last call. */
  List<Due> due() {
    String answer = ask("due");
    if (answer.isEmpty()) {
      return List.of();
    }
    List<Due> all = new ArrayList<>();
    for (String line : answer.split("\n", -1)) {
      Map<String, String> words = words(line);
      all.add(new Due(words.getOrDefault("does", ""), words));
    }
    return all;
  }

  /**
   * What is played.
   *
   * @param name for people
   * @param seed of everything random in it
   * @param runNanos how long it runs, nanoseconds
   * @param site what its owner calls the site; may be empty
   */
  record Script(String name, long seed, long runNanos, String site) {}

  Script script() {
    String answer = ask("scenario");
    int name = answer.indexOf(" name=");
    Map<String, String> words = words(answer.substring(0, name));
    double runS = Double.parseDouble(words.getOrDefault("run", "0"));
    return new Script(
        answer.substring(name + " name=".length()),
        Long.parseLong(words.getOrDefault("seed", "0")),
        Math.round(runS * NANOS_PER_SECOND),
        ask("site"));
  }

  private static Map<String, String> words(String line) {
    Map<String, String> words = new LinkedHashMap<>();
    for (String word : line.split(" ", -1)) {
      int sign = word.indexOf('=');
      if (sign > 0) {
        words.put(word.substring(0, sign), word.substring(sign + 1));
      }
    }
    return words;
  }

  private String ask(String question) {
    return questions.apply(question);
  }

  @Override
  public void close() {
    buses.close();
  }
}
