package io.pitchwatch.levelling;

import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.coach.AngleText;
import io.pitchwatch.levelling.Turning.Heading;
import io.pitchwatch.levelling.Turning.Headings;
import java.util.Locale;

/** Headings as text for people. */
public final class TurnText {

  private TurnText() {}

  /** The text, lines ended by a line feed. */
  public static String of(Headings headings) {
    StringBuilder text = new StringBuilder();
    text.append("The ground slopes ").append(AngleText.of(headings.slopeRad(), 1)).append("; now ");
    text.append(LeanText.of(headings.site().lean(), 2)).append("\n\nBest:\n");
    if (headings.best().isEmpty()) {
      text.append("  ").append(headings.headline()).append('\n');
    }
    for (int i = 0; i < headings.best().size(); i++) {
      text.append("  ")
          .append(i + 1)
          .append(". ")
          .append(headings.best().get(i).text())
          .append('\n');
    }
    text.append("\nEvery heading:\n");
    text.append("  turn            lean                                  verdict        pieces\n");
    for (Heading heading : headings.all()) {
      text.append(row(heading));
    }
    text.append("\nBefore anyone goes near:\n");
    Cautions.ALL.forEach(caution -> text.append("  ! ").append(caution).append('\n'));
    return text.toString();
  }

  private static String row(Heading heading) {
    int deg = heading.turnDeg();
    String turn =
        deg == 0 ? "as it stands" : Math.abs(deg) + " deg " + (deg > 0 ? "left" : "right");
    return String.format(
        Locale.ROOT,
        "  %-14s  %-36s  %-13s  %d\n",
        turn,
        LeanText.of(heading.lean(), 2),
        heading.verdict().word().replace('-', ' '),
        heading.pieces());
  }
}
