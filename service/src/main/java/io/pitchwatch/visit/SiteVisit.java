package io.pitchwatch.visit;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.coach.Stay;
import io.pitchwatch.coach.Surface;

/**
 * One visit in the site book. Leans that are not known are NaN.
 *
 * @param number rises from visit to visit, from 1
 * @param site the owner's name for the place; may be empty. No position is kept
 * @param begunWallSeconds seconds since 1970, a label
 * @param endedWallSeconds likewise; 0 while the visit lasts
 * @param stay kind of stay
 * @param surface what the coach stood on
 * @param found how the floor leaned on arrival
 * @param levelled how it leaned once levelled
 * @param settled by how much that changed until the end
 * @param laid what lay under the tyres, for people; at most 4000 characters
 * @param plan the headline of the plan that stood then; empty if there was none; at most 4000
 */
public record SiteVisit(
    long number,
    String site,
    long begunWallSeconds,
    long endedWallSeconds,
    Stay stay,
    Surface surface,
    Lean found,
    Lean levelled,
    Lean settled,
    String laid,
    String plan) {

  /** Longest name of a site, characters. */
  public static final int LONGEST_SITE = 80;

  /** Longest text of what was laid or planned, characters. */
  public static final int LONGEST_TEXT = 4000;

  /**
   * Checks number and lengths.
   *
   * @throws IllegalArgumentException if number is less than 1, or a text is too long
   */
  public SiteVisit {
    if (number < 1) {
      throw new IllegalArgumentException("number is " + number + "; it must be 1 or more");
    }
    check("site", site, LONGEST_SITE);
    check("laid", laid, LONGEST_TEXT);
    check("plan", plan, LONGEST_TEXT);
  }

  /** The same visit under another name. */
  public SiteVisit named(String name) {
    return new SiteVisit(
        number,
        name,
        begunWallSeconds,
        endedWallSeconds,
        stay,
        surface,
        found,
        levelled,
        settled,
        laid,
        plan);
  }

  /** The same with another end, kind of stay and surface. */
  public SiteVisit staying(long ended, Stay newStay, Surface newSurface) {
    return new SiteVisit(
        number,
        site,
        begunWallSeconds,
        ended,
        newStay,
        newSurface,
        found,
        levelled,
        settled,
        laid,
        plan);
  }

  /** The same with other leans. */
  public SiteVisit leaning(Lean newFound, Lean newLevelled, Lean newSettled) {
    return new SiteVisit(
        number,
        site,
        begunWallSeconds,
        endedWallSeconds,
        stay,
        surface,
        newFound,
        newLevelled,
        newSettled,
        laid,
        plan);
  }

  /** The same with something else under the tyres, and planned. */
  public SiteVisit on(String newLaid, String newPlan) {
    return new SiteVisit(
        number,
        site,
        begunWallSeconds,
        endedWallSeconds,
        stay,
        surface,
        found,
        levelled,
        settled,
        newLaid,
        newPlan);
  }

  private static void check(String name, String text, int longest) {
    if (text.length() > longest) {
      throw new IllegalArgumentException(
          name + " has " + text.length() + " characters; at most " + longest);
    }
  }
}
