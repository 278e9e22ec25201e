package io.pitchwatch.alarms;

/** The states of an alarm: IEC 62682 and OPC UA Part 9, by their names there (from memory). */
public enum AlarmState {
  /** Nothing is wrong, or what was has been seen by somebody and is over. */
  NORMAL,
  /** Something is wrong and nobody has said that they know. */
  UNACKNOWLEDGED,
  /** Something is wrong and somebody knows. */
  ACKNOWLEDGED,
  /** Something was wrong, is over, and nobody has said that they know. */
  RETURNED_UNACKNOWLEDGED,
  /** Put aside by somebody, for a limited time. */
  SHELVED,
  /** Without meaning at present: under way. */
  SUPPRESSED_BY_DESIGN
}
