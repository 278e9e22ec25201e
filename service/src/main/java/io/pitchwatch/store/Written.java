package io.pitchwatch.store;

/** What came of writing. */
public sealed interface Written {

  /** It will be there after a restart. */
  record Done() implements Written {}

  /** It will be there, in a new file; the one before was damaged. */
  record Anew(Trouble.SetAside trouble) implements Written {}

  /** It is known until the process ends; writing it is tried again with the next write. */
  record NotLasting(Trouble.NotLasting trouble) implements Written {}
}
