package io.pitchwatch.command;

/** What the exit codes of every command mean. */
final class ExitCode {

  /** All well; for {@code check}: within limits; for {@code plan}: a plan was found. */
  static final int GOOD = 0;

  /** The answer is bad news: outside limits, no safe plan, a fault that doctor found. */
  static final int BAD_NEWS = 1;

  /** Wrong input, or not known. */
  static final int NOT_KNOWN = 2;

  /** Something that should not happen in this program. */
  static final int INTERNAL = 70;

  private ExitCode() {}
}
