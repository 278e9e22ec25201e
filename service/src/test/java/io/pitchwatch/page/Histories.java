package io.pitchwatch.page;

import java.util.Locale;
import java.util.StringJoiner;

/** Answers to a request for history, in the form of docs/schemas/history.json. */
final class Histories {

  private static final int MINUTES = 1440;
  private static final int GAP_FROM = 500;
  private static final int GAP_TO = 620;

  private Histories() {}

  /**
   * A day of minutes on ground that gives way from noon on, with two hours of which nothing is
   * known.
   *
   * @param now seconds since 1970
   */
  static String sinkingDay(long now) {
    StringJoiner rows = new StringJoiner(",", "[", "]");
    for (int i = 0; i < MINUTES; i++) {
      long time = now - (MINUTES - i) * 60L;
      if (i == GAP_FROM) {
        rows.add("[" + time + ",null,null,null,null,null,null,null,null,null,null,null,null]");
      } else if (i < GAP_FROM || i >= GAP_TO) {
        rows.add(row(time, 0.3 + (i < 720 ? 0 : (i - 720) * 0.002), 0.02 * Math.sin(i / 9.0)));
      }
    }
    long noon = now - 720 * 60L;
    return """
        {"coach":"heron","now":%d,"step":"minute","truncated":false,
         "limits":{"tolerance":1.5,"fridges":[{"id":"galley","roll":3,"pitch":6}]},
         "forecast":{"settling":true,
           "roll":{"ratePerHour":0.12,"rateError":0.01,"sunk":1.4},
           "pitch":{"ratePerHour":0.002,"rateError":0.004,"sunk":0},
           "toLimit":{"limit":"galley","hours":10.5,"soonestHours":8,"latestHours":14}},
         "columns":["time","roll","rollLeast","rollMost","pitch","pitchLeast","pitchMost",
           "uncertainty","spread","temperature","minutes","known","marks"],
         "rows":%s,
         "events":[
           {"time":%d,"kind":"zero","name":"main","text":""},
           {"time":%d,"kind":"raised","name":"settling","text":"The ground gives way."}]}
        """
        .formatted(now, rows, noon - 36000, noon + 7200);
  }

  private static String row(long time, double roll, double pitch) {
    return String.format(
        Locale.ROOT,
        "[%d,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f,0.004,0.02,18.5,1,1,\"\"]",
        time,
        roll,
        roll - 0.03,
        roll + 0.03,
        pitch,
        pitch - 0.02,
        pitch + 0.02);
  }
}
