package io.pitchwatch.config;

import static io.pitchwatch.config.Range.angle;
import static io.pitchwatch.config.Range.length;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import io.pitchwatch.coach.Fridge;
import io.pitchwatch.coach.Levelling;
import io.pitchwatch.coach.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what the owner says of the coach: [coach], [levelling] and what [[…]] lists. */
final class CoachReader {

  private static final int MOST_FRIDGES = 8;
  private static final int MOST_DOORS = 32;

  private CoachReader() {}

  /** The coach; full of stand-ins where faults are noted. */
  static Coach read(Section root) {
    String id = "x";
    Units units = Units.METRIC;
    if (root.has("coach")) {
      Section coach = root.table("coach");
      if (root.sound("coach")) {
        id = coach.id();
        units = coach.choice("units", Units.class, Units.METRIC);
        coach.refuseUnknown();
      }
    } else {
      root.missing("coach", "a table [coach] with the coach's id");
    }
    return new Coach(
        id,
        units,
        AxleReader.read(root),
        GearReader.jackPairs(root),
        GearReader.pieces(root),
        GearReader.pads(root),
        levelling(root.table("levelling")),
        fridges(root),
        doors(root));
  }

  private static Levelling levelling(Section section) {
    Levelling levelling =
        new Levelling(
            section.quantity("step", length("5 mm", "500 mm"), "40 mm"),
            section.quantity("stack", length("5 mm", "1 m"), "160 mm"),
            section.quantity("twist", angle("0 deg", "10 deg"), "0.3 deg"),
            section.quantity("contact", length("0 mm", "200 mm"), "12 mm"),
            section.quantity("overnight", angle("0.01 deg", "15 deg"), "1.5 deg"),
            section.quantity("stay", angle("0.01 deg", "15 deg"), "0.5 deg"),
            section.quantity("season", angle("0.01 deg", "15 deg"), "0.25 deg"));
    section.refuseUnknown();
    return levelling;
  }

  private static List<Fridge> fridges(Section root) {
    List<Section> sections = root.tables("fridge", MOST_FRIDGES);
    List<Fridge> fridges = new ArrayList<>();
    for (Section section : sections) {
      fridges.add(
          new Fridge(
              section.id(),
              section.quantity("side-to-side", angle("0.1 deg", "45 deg"), "3 deg"),
              section.quantity("front-to-back", angle("0.1 deg", "45 deg"), "6 deg"),
              faces(section)));
      section.refuseUnknown();
    }
    Ids.refuseRepeats(sections, fridges.stream().map(Fridge::id).toList());
    return fridges;
  }

  private static Optional<Direction> faces(Section section) {
    Faces faces = section.choice("faces", Faces.class, Faces.COACH);
    return faces == Faces.COACH ? Optional.empty() : Optional.of(Direction.valueOf(faces.name()));
  }

  private static List<Door> doors(Section root) {
    List<Section> sections = root.tables("door", MOST_DOORS);
    List<Door> doors = new ArrayList<>();
    for (Section section : sections) {
      Direction shut = section.choice("shut-towards", Direction.class, null);
      doors.add(
          new Door(
              section.id(),
              shut,
              opening(section, shut),
              section.quantity("swing", angle("10 deg", "270 deg"), "90 deg"),
              section.quantity("holds", angle("0 deg", "45 deg"), "0.5 deg"),
              section.quantity("width", length("100 mm", "3 m"), "600 mm")));
      section.refuseUnknown();
    }
    Ids.refuseRepeats(sections, doors.stream().map(Door::id).toList());
    return doors;
  }

  private static Direction opening(Section section, Direction shut) {
    Direction opens = section.choice("opens-towards", Direction.class, null);
    boolean lengthwise = shut == Direction.FRONT || shut == Direction.REAR;
    Direction square = lengthwise ? Direction.LEFT : Direction.FRONT;
    if (shut.x() * opens.x() + shut.y() * opens.y() == 0) {
      return opens;
    }
    if (section.sound("shut-towards", "opens-towards")) {
      section.fault(
          "opens-towards",
          "the same line as shut-towards",
          lengthwise ? "\"left\", \"right\": square to it" : "\"front\", \"rear\": square to it");
    }
    return square;
  }

  /** The words of {@code faces}. */
  private enum Faces {
    COACH,
    FRONT,
    REAR,
    LEFT,
    RIGHT
  }
}
