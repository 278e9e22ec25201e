package io.pitchwatch.bus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.pitchwatch.sensing.BusOutcome;
import io.pitchwatch.sensing.RegisterBus;
import java.util.Map;
import org.junit.jupiter.api.Test;

class Pi4jBusTest {

  /** Bus 987 exists on no machine. */
  @Test
  void missingKernelBusSaysWhichFileAndWhatToDo() {
    try (Pi4jBus buses = Pi4jBus.open(Pi4jBus.LINUX, Map.of())) {
      RegisterBus chip = buses.at(987, 0x53);
      for (int attempt = 0; attempt < 3; attempt++) {
        BusOutcome outcome = chip.read(0, new byte[1], 1);
        String text = assertInstanceOf(BusOutcome.Failed.class, outcome).text();
        assertTrue(text.startsWith("/dev/i2c-987 does not exist: switch I2C on"), text);
      }
      assertInstanceOf(BusOutcome.Failed.class, chip.write(0x2D, 0));
    }
  }

  @Test
  void unknownProviderSaysWhichThereAre() {
    try (Pi4jBus buses = Pi4jBus.open("nobody-i2c", Map.of())) {
      BusOutcome outcome = buses.at(1, 0x53).read(0, new byte[1], 1);
      String text = assertInstanceOf(BusOutcome.Failed.class, outcome).text();
      assertTrue(text.contains("nobody-i2c") && text.contains("linuxfs-i2c"), text);
      assertTrue(buses.face(Runnable.class).isEmpty());
    }
  }

  @Test
  void addressOutsideTheBusIsRefused() {
    try (Pi4jBus buses = Pi4jBus.open(Pi4jBus.LINUX, Map.of())) {
      var e = assertThrows(IllegalArgumentException.class, () -> buses.at(1, 0x80));
      assertEquals("address is 0x80; it must be 0x03 to 0x77", e.getMessage());
      assertThrows(IllegalArgumentException.class, () -> buses.at(-1, 0x53));
    }
  }
}
