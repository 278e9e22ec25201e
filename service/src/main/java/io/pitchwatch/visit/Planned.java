package io.pitchwatch.visit;

import io.pitchwatch.levelling.LevelPlanner;
import io.pitchwatch.levelling.Plan;
import io.pitchwatch.levelling.Site;
import io.pitchwatch.levelling.Turning;
import io.pitchwatch.levelling.Turning.Headings;

/**
 * What was planned for a site.
 *
 * @param plan for the coach as it stands
 * @param headings what turning it would bring
 */
public record Planned(Plan plan, Headings headings) {

  /** Plans a site; takes from a millisecond to seconds, so not on the thread that samples. */
  public static Planned of(Site site) {
    Headings headings = Turning.around(site);
    return new Planned(LevelPlanner.plan(site, headings), headings);
  }
}
