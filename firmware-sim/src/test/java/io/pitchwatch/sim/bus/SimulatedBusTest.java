package io.pitchwatch.sim.bus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SimulatedBusTest {

  private final List<Long> waited = new ArrayList<>();
  private final BusFaults faults = new BusFaults(9);
  private final SimulatedBus bus = new SimulatedBus(faults, waited::add);
  private final Listener chip = new Listener();
  private final byte[] in = new byte[2];

  SimulatedBusTest() {
    bus.attach(0x53, chip);
  }

  private Outcome transfer(int address) {
    return bus.transfer(address, new Slice(new byte[] {7, -1}, 0, 2), new Slice(in, 0, 2));
  }

  @Test
  void writesThenReadsAfterARepeatedStart() {
    assertEquals(Outcome.DONE, transfer(0x53));
    assertEquals(List.of("start w", "7", "255", "start r", "sent", "sent", "stop"), chip.heard);
    assertArrayEquals(new byte[] {41, 42}, in);
  }

  @Test
  void probesWithAnAddressAlone() {
    assertEquals(Outcome.DONE, bus.write(0x53, in, 0, 0));
    assertEquals(List.of("start w", "stop"), chip.heard);
  }

  @Test
  void nobodyAcknowledgesAFreeAddress() {
    assertEquals(Outcome.NO_ACKNOWLEDGE, transfer(0x1D));
    assertArrayEquals(new byte[2], in, "what was not read is untouched");
  }

  @Test
  void shareOfTransfersGoesUnacknowledged() {
    faults.nak(0.3);
    int failed = 0;
    for (int i = 0; i < 10_000; i++) {
      failed += transfer(0x53) == Outcome.NO_ACKNOWLEDGE ? 1 : 0;
    }
    assertEquals(3000, failed, 200, "seed 9");
    faults.nak(1);
    assertEquals(Outcome.NO_ACKNOWLEDGE, transfer(0x53));
    faults.clear();
    assertEquals(Outcome.DONE, transfer(0x53));
  }

  @Test
  void stuckBusFailsAtEveryAddressUntilItIsFreed() {
    faults.stuck(true);
    assertEquals(Outcome.STUCK, transfer(0x53));
    assertEquals(Outcome.STUCK, transfer(0x1D));
    assertEquals(List.of(), chip.heard);
    faults.stuck(false);
    assertEquals(Outcome.DONE, transfer(0x53));
  }

  @Test
  void stretchedClockTakesTimeAndTooLongAStretchTimesOut() {
    faults.slow(20_000_000L);
    assertEquals(Outcome.DONE, transfer(0x53));
    faults.slow(3_000_000_000L);
    assertEquals(Outcome.TIMED_OUT, transfer(0x53));
    assertEquals(List.of(20_000_000L, SimulatedBus.ADAPTER_TIMEOUT_NANOS), waited);
  }

  @Test
  void refusesReservedAndTakenAddresses() {
    assertThrows(IllegalArgumentException.class, () -> bus.attach(0x53, new Listener()));
    assertThrows(IllegalArgumentException.class, () -> bus.attach(0x07, new Listener()));
    assertThrows(IllegalArgumentException.class, () -> bus.attach(0x78, new Listener()));
  }

  @Test
  void refusesSharesThatAreNone() {
    assertThrows(IllegalArgumentException.class, () -> faults.nak(1.1));
    assertThrows(IllegalArgumentException.class, () -> faults.nak(Double.NaN));
  }

  private static final class Listener implements Target {

    private final List<String> heard = new ArrayList<>();
    private int next = 41;

    @Override
    public void start(boolean read) {
      heard.add(read ? "start r" : "start w");
    }

    @Override
    public void receive(int value) {
      heard.add(Integer.toString(value));
    }

    @Override
    public int send() {
      heard.add("sent");
      return next++;
    }

    @Override
    public void stop() {
      heard.add("stop");
    }
  }
}
