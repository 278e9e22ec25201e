package io.pitchwatch.bus;

import io.pitchwatch.sensing.BusOutcome;
import java.util.Locale;

/**
 * Reads what went wrong on a bus out of an exception: Pi4J passes on the C library's words for the
 * kernel's error number (Linux, Documentation/i2c/fault-codes: ENXIO or EREMOTEIO no acknowledge,
 * EBUSY and EAGAIN bus held or lost, ETIMEDOUT, EOPNOTSUPP a transfer the adapter cannot do).
 */
final class BusFaults {

  private BusFaults() {}

  static BusOutcome outcome(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      String text = words(cause);
      if (has(text, "remote i/o", "no such device or address", "acknowledge")) {
        return BusOutcome.Common.NO_ACKNOWLEDGE;
      }
      if (has(text, "timed out", "timeout")) {
        return BusOutcome.Common.TIMED_OUT;
      }
      if (has(text, "busy", "temporarily unavailable", "i2c lock")) {
        return BusOutcome.Common.BUSY;
      }
      if (has(text, "operation not supported")) {
        return new BusOutcome.Failed(
            "this bus takes SMBus commands only, and whole I2C messages are needed: use another");
      }
    }
    return new BusOutcome.Failed(root(e));
  }

  /** Whether the bus itself has gone, and its device file must be opened anew. */
  static boolean isGone(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      String text = words(cause);
      boolean noDevice = text.endsWith("no such device");
      if (noDevice || has(text, "bad file descriptor", "stream closed")) {
        return true;
      }
    }
    return false;
  }

  /** The innermost cause, which knows most. */
  static String root(Throwable e) {
    Throwable cause = e;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    String text = cause.getMessage();
    return text == null || text.isBlank() ? cause.getClass().getSimpleName() : text;
  }

  private static String words(Throwable e) {
    String text = e.getMessage();
    return text == null ? "" : text.toLowerCase(Locale.ROOT);
  }

  private static boolean has(String text, String... parts) {
    for (String part : parts) {
      if (text.contains(part)) {
        return true;
      }
    }
    return false;
  }
}
