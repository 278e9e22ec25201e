package io.pitchwatch.command;

import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.CalibrationText;
import io.pitchwatch.attitude.PoseGuide;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Health;
import io.pitchwatch.visit.Report.SensorReport;
import java.io.IOException;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Bias, scale and misalignment of a chip, held in many ways. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description =
        "Finds bias, scale and misalignment of the chip: hold its board still in many ways.",
    footer = {
      "",
      "Each pose is taken by itself after 2 s; the arrows printed on the board say which way. Rest",
      "the board against something: a hand is not still enough. The old calibration stays until",
      "the new one is accepted. Stop the daemon first.",
      "Exit codes: 0 accepted, 1 not accepted or none found, 2 wrong input."
    })
final class CalibrateCommand extends CareCommand {

  private static final long PATIENCE_NANOS = 180_000_000_000L;

  @Option(
      names = "--accept",
      description = "Accept a better calibration without asking; one that gains nothing never is.")
  boolean accept;

  @Override
  CareStep care(BenchPost post) throws InterruptedException, IOException {
    CareStep begun = post.upkeep().calibrate(Optional.empty(), post.date());
    if (!begun.done()) {
      return begun;
    }
    PoseGuide guide = post.upkeep().poses().orElseThrow();
    lead(post, guide);
    Optional<Calibration> found = guide.calibration();
    if (found.isEmpty()) {
      SensorReport report = post.post().report(post.nowNanos());
      if (report.health() == Health.FAILED) {
        return CareStep.refused("the sensor: " + report.reason());
      }
      post.upkeep().cancel(Guide.Task.CALIBRATE);
      return CareStep.refused(guide.lacking());
    }
    post.say("");
    post.say("                        x         y         z   one standard error");
    post.say(CalibrationText.figures(found.get()).stripTrailing());
    post.say(CalibrationText.improvement(found.get()));
    if (accepted(post, found.get())) {
      return post.upkeep().accept();
    }
    post.upkeep().cancel(Guide.Task.CALIBRATE);
    return CareStep.refused("not accepted, the old calibration stays");
  }

  private boolean accepted(BenchPost post, Calibration found) throws IOException {
    if (accept) {
      return CalibrationText.worthwhile(found);
    }
    return ask(post, "Accept it? yes or no:").equals("yes");
  }

  /** Until every way was held, or nothing new has come for three minutes. */
  private static void lead(BenchPost post, PoseGuide guide) throws InterruptedException {
    post.say("Next: " + guide.wanted() + ".");
    long startNanos = post.nowNanos();
    String[] said = {guide.said()};
    int[] taken = {0};
    long[] lastNanos = {post.nowNanos()};
    post.until(
        nowNanos -> {
          if (!guide.said().equals(said[0]) || guide.taken() != taken[0]) {
            said[0] = guide.said();
            taken[0] = guide.taken();
            lastNanos[0] = nowNanos;
            post.say(
                "  "
                    + guide.said()
                    + guide.next().map(next -> ". Next: " + next.words()).orElse("")
                    + ".");
          }
          return guide.next().isEmpty()
              || nowNanos - lastNanos[0] > PATIENCE_NANOS
              || post.dead(nowNanos - startNanos, nowNanos);
        });
  }
}
