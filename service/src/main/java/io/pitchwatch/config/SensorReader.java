package io.pitchwatch.config;

import io.pitchwatch.attitude.Axis;
import io.pitchwatch.attitude.Mounting;
import io.pitchwatch.config.Config.Sensor;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads [sensor] or [[sensor]]. */
final class SensorReader {

  private static final int MOST = 4;
  private static final int HIGHEST_BUS = 99;
  private static final Form ADDRESS = Form.matching("0x and two digits", "0x[0-9A-Fa-f]{2}");

  private SensorReader() {}

  /**
   * The sensors, at least one.
   *
   * @param others whether other keys may stand in a sensor's table, as in a scenario
   */
  static List<Sensor> read(Section root, boolean others) {
    List<Section> sections = root.tableOrTables("sensor", MOST);
    List<Sensor> sensors = new ArrayList<>();
    for (Section section : sections) {
      String number = Integer.toString(sensors.size() + 1);
      String id = section.text("id", Form.ID, number).orElse(number);
      Chip chip = section.choice("chip", Chip.class, Chip.ADXL345);
      int bus = section.whole("bus", 0, HIGHEST_BUS, 1);
      int address = address(section, chip);
      sensors.add(new Sensor(id, chip, bus, address, mounting(section)));
      if (!others) {
        section.refuseUnknown();
      }
    }
    Ids.refuseRepeats(sections, sensors.stream().map(Sensor::id).toList());
    refuseSamePlace(sections, sensors);
    return sensors;
  }

  private static int address(Section section, Chip chip) {
    List<String> pins = chip.addresses().stream().map(SensorReader::hex).toList();
    String text = section.text("address", ADDRESS, pins.get(0)).orElse(pins.get(0));
    int address = Integer.decode(text);
    if (!chip.addresses().contains(address)) {
      String allowed = pins.stream().map(Found::quoted).collect(Collectors.joining(", "));
      section.fault("address", Found.quoted(text), allowed + ", which " + chip.word() + " has");
      return chip.addresses().get(0);
    }
    return address;
  }

  private static String hex(int address) {
    return String.format(Locale.ROOT, "0x%02X", address);
  }

  private static void refuseSamePlace(List<Section> sections, List<Sensor> sensors) {
    Set<List<Integer>> taken = new HashSet<>();
    for (int i = 0; i < sensors.size(); i++) {
      Sensor sensor = sensors.get(i);
      if (sections.get(i).sound("bus", "address")
          && !taken.add(List.of(sensor.bus(), sensor.address()))) {
        sections
            .get(i)
            .fault(
                "address",
                hex(sensor.address()) + " on bus " + sensor.bus() + " again",
                "a place on a bus that no other sensor has");
      }
    }
  }

  private static Mounting mounting(Section sensor) {
    Section section = sensor.table("mounting");
    Optional<Axis> x = section.choiceIfAny("x", Axis.class);
    Optional<Axis> y = section.choiceIfAny("y", Axis.class);
    Optional<Axis> z = section.choiceIfAny("z", Axis.class);
    section.refuseUnknown();
    if (!sensor.has("mounting") || !sensor.sound("mounting") || !section.sound("x", "y", "z")) {
      return Mounting.FLAT;
    }
    List<Axis> given = Stream.of(x, y, z).flatMap(Optional::stream).toList();
    if (given.size() < 2) {
      sensor.fault("mounting", "fewer than two axes", "two of x, y and z");
    } else if (given.get(0).isParallelTo(given.get(1))
        || given.get(given.size() - 1).isParallelTo(given.get(0))) {
      sensor.fault("mounting", "parallel axes", "axes square to each other");
    } else {
      return rightHanded(sensor, x, y, z);
    }
    return Mounting.FLAT;
  }

  /** From two axes or more; the third follows, and if it is given it must be the one that does. */
  private static Mounting rightHanded(
      Section sensor, Optional<Axis> x, Optional<Axis> y, Optional<Axis> z) {
    Mounting mounting;
    if (x.isPresent() && y.isPresent()) {
      mounting = Mounting.ofXy(x.get(), y.get());
    } else if (x.isPresent()) {
      mounting = Mounting.ofXz(x.get(), z.orElseThrow());
    } else {
      mounting = Mounting.ofYz(y.orElseThrow(), z.orElseThrow());
    }
    if (z.isPresent() && z.get() != mounting.z()) {
      sensor.fault(
          "mounting",
          "z " + word(z.get()) + ", a left-handed set",
          "z " + word(mounting.z()) + " with that x and y; two axes are enough");
    }
    return mounting;
  }

  private static String word(Axis axis) {
    return axis.name().toLowerCase(Locale.ROOT);
  }
}
