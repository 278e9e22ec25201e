package io.pitchwatch.sim.bus;

import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One two-wire bus with its chips, seen from the controller.
 *
 * <p>Addresses are 7 bits; 0x08 to 0x77 are free for chips (UM10204, section 3.1.12). The calling
 * thread holds the bus for the length of a transfer.
 */
public final class SimulatedBus {

  /** How long an adapter waits for a stretched clock: one second, as Linux does by default. */
  public static final long ADAPTER_TIMEOUT_NANOS = 1_000_000_000L;

  private static final int LOWEST_ADDRESS = 0x08;
  private static final int HIGHEST_ADDRESS = 0x77;

  private final @Nullable Target[] targets = new Target[HIGHEST_ADDRESS + 1];
  private final BusFaults faults;
  private final LongConsumer wait;

  /**
   * A bus without chips.
   *
   * @param faults what may be wrong with it
   * @param wait lets so many nanoseconds of a stretched clock pass; does nothing on virtual time
   */
  public SimulatedBus(BusFaults faults, LongConsumer wait) {
    this.faults = faults;
    this.wait = wait;
  }

  /** What is wrong with this bus. */
  public BusFaults faults() {
    return faults;
  }

  /**
   * Solders a chip to the bus.
   *
   * @param address 0x08 to 0x77
   * @param target the chip
   * @throws IllegalArgumentException if the address is reserved or taken
   */
  public synchronized void attach(int address, Target target) {
    if (address < LOWEST_ADDRESS || address > HIGHEST_ADDRESS) {
      throw new IllegalArgumentException(
          String.format("address is 0x%02x; 0x08 to 0x77 are allowed", address));
    }
    if (targets[address] != null) {
      throw new IllegalArgumentException(
          String.format("address is 0x%02x, which another chip on this bus has", address));
    }
    targets[address] = target;
  }

  /**
   * Writes bytes to a chip: start, address, bytes, stop.
   *
   * @param address 7 bits
   * @param bytes where they lie
   * @param offset of the first
   * @param length how many; 0 only asks whether the chip is there
   */
  public Outcome write(int address, byte[] bytes, int offset, int length) {
    return transfer(address, new Slice(bytes, offset, length), Slice.NONE);
  }

  /**
   * Reads bytes from a chip: start, address, bytes, stop.
   *
   * @param address 7 bits
   * @param bytes where they go; untouched unless the outcome is DONE
   * @param offset of the first
   * @param length how many
   */
  public Outcome read(int address, byte[] bytes, int offset, int length) {
    return transfer(address, Slice.NONE, new Slice(bytes, offset, length));
  }

  /**
   * Writes and reads in one transfer, with a repeated start between.
   *
   * @param address 7 bits
   * @param out what is written, nothing if empty
   * @param in where the answer goes, nothing if empty; untouched unless the outcome is DONE
   */
  public synchronized Outcome transfer(int address, Slice out, Slice in) {
    Outcome hindered = hindrance();
    if (hindered != Outcome.DONE) {
      return hindered;
    }
    Target target = address >= 0 && address <= HIGHEST_ADDRESS ? targets[address] : null;
    if (target == null || faults.drawNak()) {
      return Outcome.NO_ACKNOWLEDGE;
    }
    if (out.length() > 0 || in.length() == 0) {
      target.start(false);
      for (int i = 0; i < out.length(); i++) {
        target.receive(out.get(i));
      }
    }
    if (in.length() > 0) {
      target.start(true);
      for (int i = 0; i < in.length(); i++) {
        in.set(i, target.send());
      }
    }
    target.stop();
    return Outcome.DONE;
  }

  private Outcome hindrance() {
    if (faults.isStuck()) {
      return Outcome.STUCK;
    }
    long stretchNanos = faults.slowNanos();
    if (stretchNanos > 0) {
      wait.accept(Math.min(stretchNanos, ADAPTER_TIMEOUT_NANOS));
    }
    return stretchNanos >= ADAPTER_TIMEOUT_NANOS ? Outcome.TIMED_OUT : Outcome.DONE;
  }
}
