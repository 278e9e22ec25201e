package io.pitchwatch.mqtt.tree;

import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;
import io.pitchwatch.visit.Care;
import io.pitchwatch.visit.Laid;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What people ask of the service through the broker, already checked.
 *
 * <p>Called on the link's thread, one at a time: an implementation hands the command on and returns
 * at once. What it throws is logged and otherwise without effect.
 */
public interface Commands {

  /** Chooses the kind of stay. */
  void stay(Stay stay);

  /** Says what the coach stands on. */
  void surface(Surface surface);

  /** Says what was laid under the tyres; every axle and piece in it is one of the coach's. */
  void laid(Laid laid);

  /**
   * Says what the owner calls this site.
   *
   * @param name at most {@value io.pitchwatch.visit.SiteVisit#LONGEST_SITE} characters; empty: it
   *     has no name
   */
  void site(String name);

  /** Remembers how the floor leans on this spot, to compare it with others. */
  void mark();

  /** Takes the floor as it stands now for level. */
  void zero();

  /**
   * Does a step of looking after the sensors.
   *
   * @param sensor the one that is meant; empty for all of them, or the first where but one can be
   */
  void care(Care step, Optional<String> sensor);

  /**
   * Acknowledges an alert.
   *
   * @param alertId the alert, or {@code all} for every one that stands
   */
  void acknowledge(String alertId);

  /**
   * Keeps an alert quiet for a while.
   *
   * @param alertId the alert
   * @param minutes for how long, from now; 0 ends it
   */
  void shelve(String alertId, double minutes);

  /**
   * Looks something up in the history.
   *
   * @param answer takes the document (docs/schemas/history.json), UTF-8 JSON, from any thread; it
   *     is called once, or never when the service ends before
   */
  void history(HistoryRequest request, Consumer<byte[]> answer);
}
