package io.pitchwatch.sim.scenario;

import java.util.List;

/** What came of reading a scenario. */
public sealed interface ScenarioReading {

  /**
   * It was understood.
   *
   * @param scenario what it says
   */
  record Understood(Scenario scenario) implements ScenarioReading {}

  /**
   * It was not, and why.
   *
   * @param complaints everything that is wrong with it
   */
  record Refused(List<Complaint> complaints) implements ScenarioReading {

    /** Copies the list. */
    public Refused {
      complaints = List.copyOf(complaints);
    }

    @Override
    public String toString() {
      StringBuilder text = new StringBuilder();
      complaints.forEach(complaint -> text.append(complaint).append('\n'));
      return text.toString().stripTrailing();
    }
  }
}
