package io.pitchwatch.visit;

/**
 * How far somebody is with looking after the sensors, in words; sentences without their full stop.
 *
 * @param task what is being done
 * @param said what became of the last step; may be empty
 * @param next what to do now; may be empty
 * @param undo what an undo would bring back; empty when there is nothing to go back to
 */
public record Guide(Task task, String said, String next, String undo) {

  /** Nothing is being done, nothing was. */
  public static final Guide IDLE = new Guide(Task.NONE, "", "", "");

  /** What can be done in several steps. */
  public enum Task {
    NONE,
    CALIBRATE,
    REVERSAL,
    ALIGN
  }
}
