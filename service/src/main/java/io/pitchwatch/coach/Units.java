package io.pitchwatch.coach;

/** Units of text for people; the wire is always degrees and millimetres. */
public enum Units {
  METRIC,
  IMPERIAL
}
