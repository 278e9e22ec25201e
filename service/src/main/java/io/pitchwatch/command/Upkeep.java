package io.pitchwatch.command;

import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.CalibrationText;
import io.pitchwatch.attitude.PoseGuide;
import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.Guide;
import io.pitchwatch.visit.Guide.Task;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Leads people through looking after the sensors of a coach. Zero, reversal and heading are taken
 * of all sensors at once, since one coach carries them all; a calibration is of one, the first
 * where none is named.
 */
final class Upkeep {

  private final List<SensorCare> cares;
  private Task task = Task.NONE;
  private String said = "";
  private @Nullable PoseGuide poses;
  private SensorCare inHand;

  Upkeep(List<SensorPost> posts, Kept kept) {
    cares = posts.stream().map(post -> new SensorCare(post, kept)).toList();
    inHand = cares.get(0);
    if (kept.reversalFirst(posts.get(0).id()).isPresent()) {
      task = Task.REVERSAL;
    }
  }

  /** What is going on, for people. */
  Guide guide() {
    return new Guide(task, said(), next(), poses == null ? undoWords() : "");
  }

  /** Of the first; of another only where there is something to go back to. */
  private String undoWords() {
    StringBuilder words = new StringBuilder(cares.get(0).undoWords());
    for (SensorCare care : cares.subList(1, cares.size())) {
      String more = care.undoWords();
      if (!more.isEmpty()) {
        words.append(words.isEmpty() ? "" : "; ");
        words.append("sensor ").append(care.post().id()).append(": ").append(more);
      }
    }
    return words.toString();
  }

  /** The care of the sensor that is named, which the tree has checked; of the first otherwise. */
  private SensorCare care(Optional<String> sensor) {
    return cares.stream()
        .filter(care -> sensor.isEmpty() || care.post().id().equals(sensor.get()))
        .findFirst()
        .orElseThrow();
  }

  private String said() {
    PoseGuide guide = poses;
    if (guide == null) {
      return said;
    }
    String verdict =
        guide.calibration().map(CalibrationText::improvement).orElseGet(guide::lacking);
    return guide.said().isEmpty() ? verdict : guide.said() + "; " + verdict;
  }

  private String next() {
    PoseGuide guide = poses;
    return switch (task) {
      case NONE -> "";
      case CALIBRATE -> guide == null ? "" : guide.wanted();
      case REVERSAL ->
          "turn the coach end for end on the same spot, wheels in the same tracks, and take the"
              + " second reading there";
      case ALIGN ->
          "raise one end by its jacks alone, both sides alike, until the lean front to back has"
              + " changed by a degree or more, and say which end went up";
    };
  }

  CareStep zero(long nowNanos, String date) {
    return free().orElseGet(() -> said(all(care -> care.zero(nowNanos, date))));
  }

  CareStep undo(Optional<String> sensor) {
    return free().orElseGet(() -> said(sensor.isEmpty() ? undoAll() : care(sensor).undo()));
  }

  /** Some may have nothing to go back to: the last change was of another alone. */
  private CareStep undoAll() {
    List<SensorCare> changed = cares.stream().filter(it -> !it.undoWords().isEmpty()).toList();
    return changed.isEmpty() ? cares.get(0).undo() : all(changed, SensorCare::undo);
  }

  CareStep forgetDrift(Optional<String> sensor) {
    return free()
        .orElseGet(
            () ->
                said(sensor.isEmpty() ? all(SensorCare::forgetDrift) : care(sensor).forgetDrift()));
  }

  CareStep reversalFirst(long nowNanos, String date) {
    return free()
        .orElseGet(() -> begun(Task.REVERSAL, all(care -> care.reversalFirst(nowNanos, date))));
  }

  CareStep reversalSecond(long nowNanos, String date) {
    if (task != Task.REVERSAL) {
      return CareStep.refused("there is no first reading yet");
    }
    return over(all(care -> care.reversalSecond(nowNanos, date)));
  }

  CareStep alignBefore(long nowNanos) {
    return free().orElseGet(() -> begun(Task.ALIGN, all(care -> care.alignBefore(nowNanos))));
  }

  CareStep alignAfter(boolean frontWentUp, long nowNanos, String date) {
    if (task != Task.ALIGN) {
      return CareStep.refused("there is no first reading yet");
    }
    return over(all(care -> care.alignAfter(frontWentUp, nowNanos, date)));
  }

  CareStep calibrate(Optional<String> sensor, String date) {
    return free()
        .orElseGet(
            () -> {
              inHand = care(sensor);
              poses = inHand.post().calibrate(date);
              task = Task.CALIBRATE;
              return CareStep.done(
                  "calibration begun: take "
                      + (cares.size() > 1 ? "sensor " + inHand.post().id() : "the sensor")
                      + " in your hand, or its board to a table");
            });
  }

  /** The guide through the calibration that is going on. */
  Optional<PoseGuide> poses() {
    return Optional.ofNullable(poses);
  }

  CareStep accept() {
    PoseGuide guide = poses;
    if (guide == null) {
      return CareStep.refused("no calibration is going on");
    }
    Optional<Calibration> calibration = guide.calibration();
    if (calibration.isEmpty()) {
      return CareStep.refused("there is no calibration yet: " + guide.lacking());
    }
    endPoses();
    return over(inHand.calibrated(calibration.get()));
  }

  /** Ends whatever is going on; what was in use before stays in use. */
  CareStep cancel(Task which) {
    if (task != which) {
      return CareStep.refused("nothing of that kind is going on");
    }
    if (task == Task.CALIBRATE) {
      endPoses();
      return over(CareStep.done("calibration cancelled; the old one stays"));
    }
    boolean reversal = task == Task.REVERSAL;
    return over(all(care -> reversal ? care.reversalCancelled() : care.alignCancelled()));
  }

  private void endPoses() {
    poses = null;
    inHand.post().endCalibration();
  }

  /** Refuses when something else is going on. */
  private Optional<CareStep> free() {
    return switch (task) {
      case NONE -> Optional.empty();
      case CALIBRATE -> Optional.of(CareStep.refused("a calibration is going on; cancel it first"));
      case REVERSAL -> Optional.of(CareStep.refused("a reversal is going on; cancel it first"));
      case ALIGN -> Optional.of(CareStep.refused("an align is going on; cancel it first"));
    };
  }

  private CareStep begun(Task which, CareStep step) {
    task = step.done() ? which : task;
    return said(step);
  }

  private CareStep over(CareStep step) {
    task = step.done() ? Task.NONE : task;
    return said(step);
  }

  private CareStep said(CareStep step) {
    said = step.said();
    return step;
  }

  /** Done where one could be: another may be dead, and says so. */
  private CareStep all(Function<SensorCare, CareStep> what) {
    return all(cares, what);
  }

  private static CareStep all(List<SensorCare> cares, Function<SensorCare, CareStep> what) {
    boolean done = false;
    String firstSaid = "";
    StringBuilder text = new StringBuilder();
    for (SensorCare care : cares) {
      CareStep step = what.apply(care);
      done |= step.done();
      if (text.isEmpty()) {
        firstSaid = step.said();
        text.append(step.done() ? "" : "sensor " + care.post().id() + ": not done, ");
      } else {
        text.append("; sensor ").append(care.post().id());
        text.append(step.done() ? ": " : ": not done, ");
      }
      text.append(step.said());
    }
    return done ? CareStep.done(text.toString()) : CareStep.refused(firstSaid);
  }
}
