package io.pitchwatch.alarms;

import io.pitchwatch.coach.Coach;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All alarms of one coach. docs/alarms.md lists them.
 *
 * <p>Not thread-safe; allocates nothing in a round that changes nothing.
 */
public final class AlarmWatch {

  /** How often the texts of standing alarms are written anew, so that they tell of today. */
  private static final long REWRITE_NANOS = Times.minutes(10);

  private static final Comparator<StandingAlarm> MOST_URGENT_FIRST =
      Comparator.comparing(StandingAlarm::priority)
          .thenComparingLong(StandingAlarm::sinceNanos)
          .thenComparing(StandingAlarm::id);

  private final List<AlarmSource> sources;
  private final List<Alarm> alarms = new ArrayList<>();
  private List<StandingAlarm> standing = List.of();
  private long writtenNanos;
  private int piecesLaid;
  private boolean stale;

  /**
   * The alarms of a coach, all normal.
   *
   * @param coach the coach
   * @param sensorIds its sensors, in the order in which situations tell of them
   */
  public AlarmWatch(Coach coach, List<String> sensorIds) {
    sources = AlarmCatalogue.of(coach, sensorIds);
    sources.forEach(source -> alarms.add(Alarm.NORMAL));
  }

  /**
   * One round.
   *
   * @param situation all that alarms look at
   * @param nowNanos monotonic time, never before that of the last round
   * @return all that stand, most urgent first; the same list until one changes, a piece is
   *     collected, or ten minutes are over
   */
  public List<StandingAlarm> round(Situation situation, long nowNanos) {
    stale |= situation.piecesLaid() != piecesLaid;
    piecesLaid = situation.piecesLaid();
    for (int i = 0; i < alarms.size(); i++) {
      AlarmSource source = sources.get(i);
      Alarm before = alarms.get(i);
      Alarm after =
          AlarmCourse.measured(
              source.rule(), before, source.excess(situation), situation.underWay(), nowNanos);
      if (!after.equals(before)) {
        alarms.set(i, after);
        stale |= after.state() != before.state() || after.notices() != before.notices();
      }
    }
    if (stale || (!standing.isEmpty() && nowNanos - writtenNanos >= REWRITE_NANOS)) {
      write(situation, nowNanos);
    }
    return standing;
  }

  private void write(Situation situation, long nowNanos) {
    List<StandingAlarm> all = new ArrayList<>();
    for (int i = 0; i < alarms.size(); i++) {
      Alarm alarm = alarms.get(i);
      AlarmState state = alarm.state();
      if (alarm.active() || !alarm.acknowledged()) {
        AlarmSource source = sources.get(i);
        String line = source.text(situation).line(nowNanos - alarm.sinceNanos());
        all.add(
            new StandingAlarm(
                source.rule().id(),
                source.rule().priority(),
                state,
                line,
                alarm.sinceNanos(),
                alarm.notices()));
      }
    }
    all.sort(MOST_URGENT_FIRST);
    standing = List.copyOf(all);
    writtenNanos = nowNanos;
    stale = false;
  }

  /** Somebody says that they know of an alarm. The next round shows it. */
  public AlarmOutcome acknowledge(String id) {
    int at = indexOf(id);
    if (at < 0) {
      return unknown(id);
    }
    return put(at, AlarmCourse.acknowledged(alarms.get(at)));
  }

  /**
   * Somebody puts an alarm aside, or takes it back. The next round shows it.
   *
   * @param lastsNanos for how long, at most a day; 0 takes it back
   * @param nowNanos monotonic time
   */
  public AlarmOutcome shelve(String id, long lastsNanos, long nowNanos) {
    int at = indexOf(id);
    if (at < 0) {
      return unknown(id);
    }
    if (lastsNanos < 0 || lastsNanos > AlarmCourse.LONGEST_SHELF_NANOS) {
      return new AlarmOutcome.Refused("An alarm can be put aside for 0 to 24 h.");
    }
    Alarm alarm = alarms.get(at);
    return put(
        at,
        lastsNanos == 0
            ? AlarmCourse.unshelved(alarm, nowNanos)
            : AlarmCourse.shelved(alarm, lastsNanos, nowNanos));
  }

  private AlarmOutcome put(int at, Alarm after) {
    stale |= !after.equals(alarms.get(at));
    alarms.set(at, after);
    return new AlarmOutcome.Done();
  }

  private AlarmOutcome unknown(String id) {
    List<String> ids = new ArrayList<>();
    sources.forEach(source -> ids.add(source.rule().id()));
    return new AlarmOutcome.Refused(
        "There is no alarm \"" + id + "\"; there are " + String.join(", ", ids) + ".");
  }

  private int indexOf(String id) {
    for (int i = 0; i < sources.size(); i++) {
      if (sources.get(i).rule().id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * What must survive a restart, by alarm id; alarms of which nothing was ever heard are left out.
   */
  public Map<String, AlarmMemory> remember(long nowNanos) {
    Map<String, AlarmMemory> memories = new LinkedHashMap<>();
    for (int i = 0; i < alarms.size(); i++) {
      if (!alarms.get(i).equals(Alarm.NORMAL)) {
        memories.put(sources.get(i).rule().id(), AlarmMemory.of(alarms.get(i), nowNanos));
      }
    }
    return memories;
  }

  /**
   * Goes on from before a restart; ids that are no more are left out.
   *
   * @param memories by alarm id
   * @param awayNanos how long nobody watched, nanoseconds; 0 where no clock can tell
   * @param nowNanos monotonic time now
   */
  public void recall(Map<String, AlarmMemory> memories, long awayNanos, long nowNanos) {
    for (int i = 0; i < alarms.size(); i++) {
      AlarmMemory memory = memories.get(sources.get(i).rule().id());
      if (memory != null) {
        alarms.set(i, memory.recall(awayNanos, nowNanos));
      }
    }
    stale = true;
  }
}
