package io.pitchwatch.sensing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** Looks for known chips on a bus; reads identity registers and writes nothing. */
public final class ChipSearch {

  private ChipSearch() {}

  /**
   * What an address said.
   *
   * @param address on the bus
   * @param text for people: the chip, or that something else answers, or what went wrong
   * @param chips the chips whose identity it shows; empty if none
   */
  public record Found(int address, String text, List<Chip> chips) {}

  /**
   * Asks every address at which a known chip may be.
   *
   * @param bus the chip at an address
   * @return the addresses at which something answered or the bus failed, in rising order; those
   *     that gave no acknowledge are left out
   */
  public static List<Found> search(IntFunction<RegisterBus> bus) {
    TreeSet<Integer> addresses = new TreeSet<>();
    for (Chip chip : Chip.values()) {
      addresses.addAll(chip.addresses());
    }
    List<Found> found = new ArrayList<>();
    for (int address : addresses) {
      ask(address, bus.apply(address), found);
    }
    return found;
  }

  private static void ask(int address, RegisterBus bus, List<Found> found) {
    ChipOutcome last = ChipOutcome.Plain.DONE;
    for (Chip chip : Chip.values()) {
      if (chip.addresses().contains(address)) {
        last = chip.driver(bus).identify();
        if (last.ok()) {
          found.add(new Found(address, chip.driver(bus).facts().chip(), List.of(chip)));
          return;
        }
      }
    }
    boolean nobody =
        last instanceof ChipOutcome.OffBus off && off.bus() == BusOutcome.Common.NO_ACKNOWLEDGE;
    if (!nobody) {
      found.add(new Found(address, last.text(), List.of()));
    }
  }
}
