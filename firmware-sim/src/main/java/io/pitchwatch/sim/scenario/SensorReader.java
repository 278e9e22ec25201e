package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Axes;
import io.pitchwatch.sim.chip.Part;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads one [sensor] of a scenario or of a coach's config. */
final class SensorReader {

  private static final double USUAL_ARM_M = 0.6;
  private static final int MOST_BUSES = 64;

  private final Source source;
  private final List<Complaint> complaints;
  private final boolean lent;

  /**
   * A reader.
   *
   * @param source the file, beside which recordings lie
   * @param complaints receives what is wrong
   * @param lent whether the section belongs to a config, which has its own further keys
   */
  SensorReader(Source source, List<Complaint> complaints, boolean lent) {
    this.lent = lent;
    this.source = source;
    this.complaints = complaints;
  }

  SensorSetup read(Section section) {
    String label = section.choice("chip", ChipKind.ADXL345.label(), ChipKind.labels());
    ChipKind chip = ChipKind.valueOf(label.toUpperCase(Locale.ROOT));
    section.leave("id");
    int bus = (int) section.whole("bus", 1, 0, MOST_BUSES);
    int address = address(section, chip);
    Optional<SensorSetup.Tape> tape = tape(section);
    Part part = part(section, chip, tape.isPresent());
    double armM = section.quantity("height", Dimension.LENGTH, USUAL_ARM_M);
    Mounting mounting = mounting(section.table("mounting"), section.table("mounting-error"));
    if (!lent) {
      section.finish();
    }
    return new SensorSetup(chip, bus, address, part, new SensorSetup.Place(mounting, armM), tape);
  }

  private static int address(Section section, ChipKind chip) {
    int usual = chip.addresses().get(0);
    List<String> allowed =
        chip.addresses().stream().map(address -> String.format("0x%02x", address)).toList();
    String found = section.text("address", allowed.get(0));
    for (int address : chip.addresses()) {
      if (String.format("0x%02x", address).equalsIgnoreCase(found)) {
        return address;
      }
    }
    section.complain("address", String.join(" | ", allowed) + " for this chip");
    return usual;
  }

  private Optional<SensorSetup.Tape> tape(Section section) {
    boolean loop = section.flag("loop", false);
    double stretch = section.number("stretch", 1, 1e-3, 1e6);
    if (!section.has("recording")) {
      if (section.has("loop") || section.has("stretch")) {
        section.complain("recording", "the path of a CSV file that loop and stretch can apply to");
      }
      return Optional.empty();
    }
    String name = section.text("recording");
    Path file = source.beside(name).file().orElse(Path.of(name));
    return Recording.read(file, complaints).stream()
        .findFirst()
        .map(recording -> new SensorSetup.Tape(recording, loop, stretch));
  }

  /** A recording has its own noise in it; more is added only if asked for. */
  private static Part part(Section section, ChipKind chip, boolean recorded) {
    Part typical = chip.typicalPart();
    Axes noise = recorded ? Axes.ZERO : typical.noiseUgPerRootHz();
    Axes density = axes(section, "noise", Dimension.NOISE, noise);
    if (Math.min(density.x(), Math.min(density.y(), density.z())) < 0) {
      section.complain("noise", "0 or more");
      density = noise;
    }
    double ppm = section.quantity("clock", Dimension.CLOCK, 0);
    if (Math.abs(ppm) > Part.WORST_CLOCK_PPM) {
      section.complain("clock", "at most 10 % either way");
      ppm = 0;
    }
    return typical
        .withNoise(density)
        .withBias(axes(section, "bias", Dimension.BIAS, Axes.ZERO))
        .withDrift(axes(section, "temperature-drift", Dimension.DRIFT, Axes.ZERO))
        .withClock(ppm);
  }

  /** One figure for all axes, or a table with one for each. */
  private static Axes axes(Section section, String key, Dimension dimension, Axes fallback) {
    if (!section.isTable(key)) {
      if (!section.has(key)) {
        return fallback;
      }
      double all = section.quantity(key, dimension, 0);
      return new Axes(all, all, all);
    }
    Section each = section.table(key);
    Axes found =
        new Axes(
            each.quantity("x", dimension, fallback.x()),
            each.quantity("y", dimension, fallback.y()),
            each.quantity("z", dimension, fallback.z()));
    each.finish();
    return found;
  }

  /** Two of x, y and z, or all; by default x forward, z up. */
  private static Mounting mounting(Section axes, Section error) {
    Optional<Direction> x = direction(axes, "x");
    Optional<Direction> y = direction(axes, "y");
    Optional<Direction> z = direction(axes, "z");
    axes.finish();
    double[] offRad = {
      error.quantity("roll", Dimension.ANGLE, 0),
      error.quantity("pitch", Dimension.ANGLE, 0),
      error.quantity("yaw", Dimension.ANGLE, 0)
    };
    error.finish();
    if (axes.isPresent()) {
      Optional<Direction[]> found = Direction.rightHanded(x, y, z);
      if (found.isPresent()) {
        return Mounting.of(found.get()[0], found.get()[2], offRad);
      }
      axes.complain("x", "two of x, y and z, square to each other; all three right-handed");
    }
    return Mounting.of(Direction.FORWARD, Direction.UP, offRad);
  }

  private static Optional<Direction> direction(Section section, String key) {
    String found = section.choice(key, "", Direction.labels());
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(Direction.valueOf(found.toUpperCase(Locale.ROOT)));
  }
}
