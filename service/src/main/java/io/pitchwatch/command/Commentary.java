package io.pitchwatch.command;

import io.pitchwatch.attitude.LeanText;
import io.pitchwatch.comfort.Verdict;
import io.pitchwatch.floor.FloorState;
import io.pitchwatch.visit.Phase;
import io.pitchwatch.visit.Report;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.Consumer;

/** Tells a demo's story in the terminal: one line whenever something changes in words. */
final class Commentary implements Consumer<Report> {

  private record Words(FloorState state, Verdict verdict, Phase phase, String lean) {}

  private final PrintWriter out;
  private Words said = new Words(FloorState.UNKNOWN, Verdict.UNKNOWN, Phase.ARRIVING, "");
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
    Words now = new Words(state, report.verdict(), report.phase(), lean);
    if (!now.equals(said)) {
      said = now;
      say(report, now);
    }
  }

  private void say(Report report, Words now) {
    long seconds = (report.atNanos() - startNanos) / 1_000_000_000L;
    StringBuilder line =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "%3d:%02d  %s, floor %s",
                seconds / 60,
                seconds % 60,
                word(now.phase()),
                word(now.state())));
    if (!now.lean().isEmpty()) {
      line.append(": ").append(now.lean()).append("; ").append(word(now.verdict()));
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

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
