package io.pitchwatch.mqtt.broker;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;

/**
 * Who may use the built-in broker, and as what.
 *
 * @param user name
 * @param password as it is in its file
 * @param kind what it may do
 */
record Account(String user, String password, Kind kind) {

  /** What an account is for. */
  enum Kind {
    /** The daemon: the only one that may say what the coach says. */
    DAEMON,
    /** Dashboards, hubs and the remote check: read everything, send commands and questions. */
    DASHBOARD,
    /** Screens that only show: read everything. */
    GUEST
  }

  /** Whether this is the one; takes as long for a wrong password as for the right one. */
  boolean matches(String givenUser, String givenPassword) {
    return user.equals(givenUser)
        && MessageDigest.isEqual(
            password.getBytes(StandardCharsets.UTF_8),
            givenPassword.getBytes(StandardCharsets.UTF_8));
  }

  /** The password stays out of every log. */
  @Override
  public String toString() {
    return user + " (" + kind + ")";
  }
}
