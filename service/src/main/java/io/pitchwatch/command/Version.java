package io.pitchwatch.command;

/** What this program calls itself. */
final class Version {

  private Version() {}

  /** From the jar's manifest; "unpackaged" when run from classes. */
  static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "unpackaged" : version;
  }
}
