package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.floor.ParkedCoach.Scene;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Prints the error of the steady lean against the bound of the chip's white noise, and how often
 * two standard errors cover it, each angle by its own, by chip, scene and time.
 * docs/figures/accuracy.md holds its output.
 */
final class AccuracyFigures {

  private static final long SEED = 1;
  private static final int[] SECONDS = {5, 10, 30, 60};

  /** Errors over many seeds at one moment after the start. */
  static final class Outcome {
    int runs;
    int steady;
    final int[] covered = new int[2];
    double squares;
    double roll;
    double pitch;
    double rollStated;
    double pitchStated;

    void add(FloorReading reading, Lean truth) {
      runs++;
      if (reading.state() != FloorState.STEADY) {
        return;
      }
      steady++;
      double[] stated = {reading.error().rollRad(), reading.error().pitchRad()};
      double[] errors = {
        reading.steady().rollRad() - truth.rollRad(), reading.steady().pitchRad() - truth.pitchRad()
      };
      for (int i = 0; i < 2; i++) {
        squares += errors[i] * errors[i];
        covered[i] += Math.abs(errors[i]) < 2 * stated[i] ? 1 : 0;
      }
      roll += errors[0] * errors[0];
      pitch += errors[1] * errors[1];
      rollStated += stated[0] * stated[0];
      pitchStated += stated[1] * stated[1];
    }

    double rmsRad() {
      return Math.sqrt(squares / (2 * steady));
    }

    double rollRmsRad() {
      return Math.sqrt(roll / steady);
    }

    double pitchRmsRad() {
      return Math.sqrt(pitch / steady);
    }

    double coverage() {
      return (covered[0] + covered[1]) / (2.0 * steady);
    }

    double rollCoverage() {
      return covered[0] / (double) steady;
    }

    double pitchCoverage() {
      return covered[1] / (double) steady;
    }

    double rollStatedRad() {
      return Math.sqrt(rollStated / steady);
    }

    double pitchStatedRad() {
      return Math.sqrt(pitchStated / steady);
    }
  }

  private AccuracyFigures() {}

  static Outcome[] measure(Chip chip, double rateHz, Scene scene, int seeds, int... seconds) {
    Outcome[] outcomes = new Outcome[seconds.length];
    for (int i = 0; i < seconds.length; i++) {
      outcomes[i] = new Outcome();
    }
    SplittableRandom leans = new SplittableRandom(SEED);
    for (int s = 0; s < seeds; s++) {
      Lean lean = Lean.ofDegrees(leans.nextDouble(-4, 4), leans.nextDouble(-4, 4));
      ParkedCoach coach = new ParkedCoach(chip, rateHz, scene, lean, leans.nextLong());
      FloorFilter filter = new FloorFilter(chip.noise(rateHz));
      int due = 0;
      while (due < seconds.length) {
        long nanos = coach.next();
        if (nanos >= seconds[due] * 1_000_000_000L) {
          outcomes[due++].add(filter.reading(nanos), lean);
        }
        filter.accept(nanos, coach.sample[0], coach.sample[1], coach.sample[2]);
      }
    }
    return outcomes;
  }

  /**
   * Prints the table.
   *
   * @param args number of seeds, 1000 if absent
   */
  public static void main(String[] args) {
    int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
    System.out.println(
        "| chip | scene | s | rms deg | of the bound | roll rms deg | stated | pitch rms deg |"
            + " stated | inside 2 s.e. | roll | pitch | steady |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for (Chip chip : Chip.values()) {
      if (args.length > 1 && !args[1].contains(chip.name())) continue;
      for (Scene scene : Scene.values()) {
        if (args.length > 2 && !args[2].contains(scene.name())) continue;
        Outcome[] outcomes = measure(chip, 100, scene, seeds, SECONDS);
        for (int i = 0; i < SECONDS.length; i++) {
          print(chip, scene, SECONDS[i], outcomes[i]);
        }
      }
    }
  }

  private static void print(Chip chip, Scene scene, int seconds, Outcome o) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %d | %.5f | %.2f | %.5f | %.5f | %.5f | %.5f |"
            + " %.1f %% | %.1f %% | %.1f %% | %.1f %% |%n",
        chip,
        scene.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        seconds,
        Math.toDegrees(o.rmsRad()),
        o.rmsRad() / chip.noise(100).boundRad(seconds),
        Math.toDegrees(o.rollRmsRad()),
        Math.toDegrees(o.rollStatedRad()),
        Math.toDegrees(o.pitchRmsRad()),
        Math.toDegrees(o.pitchStatedRad()),
        100 * o.coverage(),
        100 * o.rollCoverage(),
        100 * o.pitchCoverage(),
        100.0 * o.steady / o.runs);
  }
}
