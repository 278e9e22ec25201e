package io.pitchwatch.levelling;

import io.pitchwatch.coach.Coach;
import io.pitchwatch.coach.Pad;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.levelling.Turning.Headings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/** What would change a plan that is not good: the missing piece, or the better heading. */
final class Remedies {

  /** Nobody carries more of a kind than this many more (our own figure). */
  private static final int MOST_MORE = 8;

  private Remedies() {}

  static List<Reason> of(Plan plan, Supplier<Headings> headings) {
    List<Reason> remedies = new ArrayList<>();
    if (plan.verdict() == PlanVerdict.GOOD) {
      return remedies;
    }
    remedies.addAll(Unusable.remarks(plan.site()));
    missing(plan).ifPresent(remedies::add);
    headings.get().best().stream()
        .filter(heading -> heading.verdict().compareTo(plan.verdict()) < 0)
        .findFirst()
        .ifPresent(heading -> remedies.add(new Reason("heading", heading.text())));
    return remedies;
  }

  /** The kind of which the fewest more would do. */
  private static Optional<Reason> missing(Plan plan) {
    Site site = plan.site();
    int fewest = MOST_MORE + 1;
    String kind = "";
    for (Piece piece : site.coach().pieces()) {
      int more = needed(plan, fewest, n -> with(site.coach(), piece, piece.count() + n));
      if (more < fewest) {
        fewest = more;
        kind = piece.id();
      }
    }
    for (Pad pad : site.coach().pads()) {
      int more = needed(plan, fewest, n -> with(site.coach(), pad, pad.count() + n));
      if (more < fewest) {
        fewest = more;
        kind = pad.id();
      }
    }
    String would =
        plan.verdict() == PlanVerdict.MOVE ? "there would be a safe plan" : "it would do";
    return fewest > MOST_MORE
        ? Optional.empty()
        : Optional.of(
            new Reason("missing-piece", "with " + fewest + " more of " + kind + " " + would));
  }

  /** How many more are needed for a better verdict, if fewer than so many; else that many. */
  private static int needed(Plan plan, int fewerThan, IntFunction<Coach> withMore) {
    if (fewerThan <= 1 || !helps(plan, withMore.apply(fewerThan - 1))) {
      return fewerThan;
    }
    int helps = fewerThan - 1;
    int doesNot = 0;
    while (helps - doesNot > 1) {
      int middle = (helps + doesNot) / 2;
      if (helps(plan, withMore.apply(middle))) {
        helps = middle;
      } else {
        doesNot = middle;
      }
    }
    return helps;
  }

  private static boolean helps(Plan plan, Coach coach) {
    Plan other = LevelPlanner.planOnly(plan.site().with(coach));
    return other.verdict().compareTo(plan.verdict()) < 0;
  }

  /** The coach with another number of one kind of piece. */
  static Coach with(Coach coach, Piece piece, int count) {
    List<Piece> pieces = new ArrayList<>(coach.pieces());
    pieces.set(
        pieces.indexOf(piece),
        new Piece(
            piece.id(),
            piece.kind(),
            piece.thicknessMm(),
            piece.lengthMm(),
            piece.widthMm(),
            count,
            piece.maxLoadKg()));
    return coach.withPieces(pieces);
  }

  private static Coach with(Coach coach, Pad pad, int count) {
    List<Pad> pads = new ArrayList<>(coach.pads());
    pads.set(
        pads.indexOf(pad),
        new Pad(pad.id(), pad.thicknessMm(), pad.lengthMm(), pad.widthMm(), count));
    return coach.withPads(pads);
  }
}
