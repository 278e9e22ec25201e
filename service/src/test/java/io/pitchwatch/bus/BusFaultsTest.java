package io.pitchwatch.bus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.pi4j.exception.Pi4JException;
import io.pitchwatch.sensing.BusOutcome;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The C library's words for the kernel's error numbers, wrapped as Pi4J wraps them. */
class BusFaultsTest {

  private static Throwable wrapped(String words) {
    return new Pi4JException(
        "Failed to execute ioctl for device 83 on bus 1", new IOException(words));
  }

  @Test
  void missingAcknowledgeIsRecognised() {
    assertEquals(BusOutcome.Common.NO_ACKNOWLEDGE, BusFaults.outcome(wrapped("Remote I/O error")));
    assertEquals(
        BusOutcome.Common.NO_ACKNOWLEDGE, BusFaults.outcome(wrapped("No such device or address")));
  }

  @Test
  void heldBusIsRecognised() {
    assertEquals(BusOutcome.Common.BUSY, BusFaults.outcome(wrapped("Device or resource busy")));
    assertEquals(
        BusOutcome.Common.BUSY, BusFaults.outcome(wrapped("Resource temporarily unavailable")));
  }

  @Test
  void timeoutIsRecognised() {
    assertEquals(BusOutcome.Common.TIMED_OUT, BusFaults.outcome(wrapped("Connection timed out")));
  }

  @Test
  void adapterThatTakesNoWholeMessagesIsNamed() {
    BusOutcome.Failed failed =
        (BusOutcome.Failed) BusFaults.outcome(wrapped("Operation not supported"));
    assertTrue(failed.text().contains("SMBus"), failed.text());
  }

  @Test
  void anythingElseKeepsItsInnermostWords() {
    assertEquals(
        new BusOutcome.Failed("Input/output error"),
        BusFaults.outcome(wrapped("Input/output error")));
    assertEquals(
        new BusOutcome.Failed("NullPointerException"),
        BusFaults.outcome(new NullPointerException()));
  }

  @Test
  void busThatWentAwayIsOpenedAnewButAMissingChipIsNot() {
    assertTrue(BusFaults.isGone(wrapped("No such device")));
    assertTrue(BusFaults.isGone(wrapped("Stream Closed")));
    assertFalse(BusFaults.isGone(wrapped("No such device or address")));
    assertFalse(BusFaults.isGone(wrapped("Connection timed out")));
  }
}
