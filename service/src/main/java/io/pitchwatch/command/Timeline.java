package io.pitchwatch.command;

import java.util.List;
import java.util.Optional;

/** Takes down what a rehearsed service would have said, in order. */
interface Timeline {

  /**
   * Which rehearsal it is.
   *
   * @param scenario its name, for people
   * @param coach id of the coach
   * @param seed of everything random in it
   * @param seconds how long it runs
   */
  record Title(String scenario, String coach, long seed, double seconds) {}

  /** What kind of thing an entry tells. */
  enum Kind {
    /** A value that changed. */
    PUBLISHED,
    /** The phase of the visit changed. */
    PHASE,
    /** An alert was raised, says something else, or returned. */
    ALERT,
    /** A line of the log. */
    LOG,
    /** Something happened around the service. */
    AROUND
  }

  /**
   * One entry.
   *
   * @param atNanos scenario time
   * @param kind what kind
   * @param topic below the coach's own; for {@link Kind#AROUND} what happened, in one word
   * @param value what stands there from now on, or what was said; empty: the topic is emptied
   * @param change of an alert: raised, changed or returned; otherwise empty
   */
  record Entry(long atNanos, Kind kind, String topic, Optional<String> value, String change) {}

  /**
   * One alert from its raising to its return.
   *
   * @param id its lasting name
   * @param raisedNanos scenario time
   * @param returnedNanos scenario time; empty while it stands
   * @param text what it said first
   */
  record AlertSpan(String id, long raisedNanos, Optional<Long> returnedNanos, String text) {}

  /**
   * What came of it all.
   *
   * @param alerts in the order in which they were raised
   * @param published how many values were said
   * @param logged how many lines of log
   * @param restarts how often the service began anew
   */
  record Summary(List<AlertSpan> alerts, long published, long logged, long restarts) {

    /** Copies the list. */
    public Summary {
      alerts = List.copyOf(alerts);
    }
  }

  void begin(Title title);

  void add(Entry entry);

  void end(Summary summary);
}
