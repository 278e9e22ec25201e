package io.pitchwatch.command;

import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.coach.Words;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.levelling.Headline;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.Consumer;

/** Tells a demo's story in the terminal: one line whenever something changes in words. */
final class Commentary implements Consumer<Report> {

  private record Line(FloorState state, Verdict verdict, Phase phase, String lean) {}

  private final PrintWriter out;
  private Line said = new Line(FloorState.UNKNOWN, Verdict.UNKNOWN, Phase.ARRIVING, "");
  private String saidHeadline = "";
  private long startNanos;
  private boolean started;

  Commentary(PrintWriter out) {
    this.out = out;
  }

  @Override
  public void accept(Report report) {
    if (!started) {
      started = true;
      startNanos = report.atNanos();
    }
    FloorState state = report.floor().state();
    // While it moves the lean changes all the time; only rest is worth a line of figures.
    String lean = state == FloorState.STEADY ? LeanText.of(report.floor().lean()) : "";
    Verdict verdict = lean.isEmpty() ? Verdict.UNKNOWN : report.verdict();
    Line now = new Line(state, verdict, report.phase(), lean);
    if (!now.equals(said)) {
      said = now;
      say(report, now);
    }
    String headline =
        report.advice().planned().map(planned -> Headline.of(planned.plan())).orElse("");
    if (!headline.isEmpty() && !headline.equals(saidHeadline)) {
      saidHeadline = headline;
      out.println(time(report) + "  plan: " + headline);
      out.flush();
    }
  }

  private void say(Report report, Line now) {
    StringBuilder line = new StringBuilder(time(report));
    line.append("  ")
        .append(Words.of(now.phase()))
        .append(", floor ")
        .append(Words.of(now.state()));
    if (!now.lean().isEmpty()) {
      line.append(": ").append(now.lean()).append("; ").append(Words.of(now.verdict()));
      for (Report.FridgeReport fridge : report.fridges()) {
        line.append(
            String.format(
                Locale.ROOT,
                "; fridge %s %s by %.1f°",
                fridge.id(),
                fridge.marginRad() < 0 ? "outside" : "within",
                Math.abs(Math.toDegrees(fridge.marginRad()))));
      }
    }
    out.println(line);
    out.flush();
  }

  private String time(Report report) {
    long seconds = (report.atNanos() - startNanos) / 1_000_000_000L;
    return String.format(Locale.ROOT, "%3d:%02d", seconds / 60, seconds % 60);
  }
}
