package io.pitchwatch.page;

/** What came of starting the page's server. */
public sealed interface PageStart {

  /**
   * The page is being served.
   *
   * @param server to ask for its address, and to close
   */
  record Started(PageServer server) implements PageStart {}

  /**
   * It is not; the rest of the service does without.
   *
   * @param reason one sentence for people: what was wanted, what stood in the way, what to do
   */
  record Refused(String reason) implements PageStart {}
}
