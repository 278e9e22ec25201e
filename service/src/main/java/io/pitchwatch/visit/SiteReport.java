package io.pitchwatch.visit;

import java.util.List;

/**
 * What is known of the site.
 *
 * @param name the owner's name for it; empty while it has none
 * @param before earlier visits to it, the latest first; none where it has no name
 */
public record SiteReport(String name, List<SiteVisit> before) {

  /** A site without a name. */
  public static final SiteReport UNNAMED = new SiteReport("", List.of());

  /** Copies the list. */
  public SiteReport {
    before = List.copyOf(before);
  }
}
