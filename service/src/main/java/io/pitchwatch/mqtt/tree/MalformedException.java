package io.pitchwatch.mqtt.tree;

/**
 * A document that is not what it should be; the message says what was found and what is allowed.
 */
public final class MalformedException extends Exception {

  private static final long serialVersionUID = 1;

  MalformedException(String message) {
    super(message);
  }

  /** Never null, unlike the inherited one. */
  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
