package io.pitchwatch.visit;

/** A step of looking after the sensors that people can ask for. */
public enum Care {
  UNDO,
  DRIFT_FORGET,
  REVERSAL_FIRST,
  REVERSAL_SECOND,
  REVERSAL_CANCEL,
  ALIGN_BEFORE,
  ALIGN_FRONT_UP,
  ALIGN_REAR_UP,
  ALIGN_CANCEL,
  CALIBRATE_START,
  CALIBRATE_ACCEPT,
  CALIBRATE_CANCEL
}
