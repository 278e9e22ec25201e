package io.pitchwatch.config;

import static io.pitchwatch.config.Range.length;
import static io.pitchwatch.config.Range.mass;

import io.pitchwatch.coach.JackPair;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads what lifts the coach: [[jack-pair]], [[piece]] and [[pad]]. */
final class GearReader {

  private static final int MOST_PAIRS = 2;
  private static final int MOST_KINDS = 16;
  private static final int MOST_OF_A_KIND = 200;

  private GearReader() {}

  /** The pairs front to back, in whatever order the file has them. */
  static List<JackPair> jackPairs(Section root) {
    List<Section> sections = root.tables("jack-pair", MOST_PAIRS);
    List<JackPair> pairs = new ArrayList<>();
    for (Section section : sections) {
      double strokeMm = section.quantity("stroke", length("10 mm", "2 m"));
      pairs.add(
          new JackPair(
              section.id(),
              section.quantity("position", length("-30 m", "30 m")),
              section.quantity("spacing", length("200 mm", "4 m")),
              section.quantity("clearance", length("0 mm", "2 m")),
              strokeMm,
              section.quantity("keep-under", length("1 mm", "2 m"), strokeMm, "the stroke"),
              section.quantity("capacity", mass("50 kg", "50 t")),
              section.quantity("foot", length("20 mm", "1 m"), "150 mm")));
      section.refuseUnknown();
    }
    Ids.refuseRepeats(sections, pairs.stream().map(JackPair::id).toList());
    refuseSamePlace(sections, pairs);
    pairs.sort(Comparator.comparingDouble(JackPair::positionMm).reversed());
    return pairs;
  }

  private static void refuseSamePlace(List<Section> sections, List<JackPair> pairs) {
    if (pairs.size() == MOST_PAIRS
        && pairs.get(0).positionMm() == pairs.get(1).positionMm()
        && sections.stream().allMatch(section -> section.sound("position"))) {
      sections
          .get(1)
          .fault("position", "the position of the other pair", "another place along the coach");
    }
  }

  static List<Piece> pieces(Section root) {
    List<Section> sections = root.tables("piece", MOST_KINDS);
    List<Piece> pieces = new ArrayList<>();
    for (Section section : sections) {
      pieces.add(
          new Piece(
              section.id(),
              section.choice("kind", PieceKind.class, null),
              section.quantity("thickness", length("0.5 mm", "500 mm")),
              section.quantity("length", length("20 mm", "6 m")),
              section.quantity("width", length("20 mm", "4 m")),
              section.whole("count", 0, MOST_OF_A_KIND, null),
              section.quantity(
                  "max-load", mass("50 kg", "100 t"), Double.POSITIVE_INFINITY, "no limit")));
      section.refuseUnknown();
    }
    Ids.refuseRepeats(sections, pieces.stream().map(Piece::id).toList());
    return pieces;
  }

  static List<Pad> pads(Section root) {
    List<Section> sections = root.tables("pad", MOST_KINDS);
    List<Pad> pads = new ArrayList<>();
    for (Section section : sections) {
      pads.add(
          new Pad(
              section.id(),
              section.quantity("thickness", length("0.5 mm", "500 mm")),
              section.quantity("length", length("20 mm", "2 m")),
              section.quantity("width", length("20 mm", "2 m")),
              section.whole("count", 0, MOST_OF_A_KIND, null)));
      section.refuseUnknown();
    }
    Ids.refuseRepeats(sections, pads.stream().map(Pad::id).toList());
    return pads;
  }
}
