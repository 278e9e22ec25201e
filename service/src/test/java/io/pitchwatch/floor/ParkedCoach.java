package io.pitchwatch.floor;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import java.util.SplittableRandom;

/**
 * Samples of a coach that stands still: the chip's white noise and counts, and, where asked for,
 * the engine idling and people walking about.
 *
 * <p>The engine follows the recorded bus (main line near 32.5 Hz, 12, 22 and 18 mg along x, y, z; a
 * line between 24 and 34 Hz is drawn by seed). The coach weighs 5 to 16 tonnes. Two people of 50 to
 * 100 kg walk at 0.8 m/s between places up to 0.9 m off the middle and 3 m along, and stay 2 to 4 s
 * in the mean; on springs of 8·10⁴ N·m/rad in roll and 5·10⁵ in pitch for each tonne, one of 75 kg
 * leans ten tonnes by up to 0.047 deg and 0.025 deg; every step at 1.9 Hz rings the body at 1.5 Hz
 * up and 1.2 Hz sideways. What is a range is drawn by seed; masses and stiffnesses are common
 * practice.
 */
final class ParkedCoach {

  enum Scene {
    STILL,
    IDLING,
    WALKING,
    IDLING_AND_WALKING
  }

  private static final double TWO_PI = 2 * Math.PI;
  private static final int PEOPLE = 2;

  private final Chip chip;
  private final double rateHz;
  private final boolean idling;
  private final boolean walking;
  private final SplittableRandom random;
  private final UpVector up;
  private final double lineHz;
  private final double phase;
  private final double[] person = new double[PEOPLE * 5];
  private final double tonnes;
  private final double stayS;
  private final double[] kg = new double[PEOPLE];
  private double rollRad;
  private double pitchRad;
  private double heaveG;
  private double swayG;
  private double sinceStepS = 10;
  private long taken;
  final double[] sample = new double[3];

  ParkedCoach(Chip chip, double rateHz, Scene scene, Lean lean, long seed) {
    this.chip = chip;
    this.rateHz = rateHz;
    this.random = new SplittableRandom(seed);
    this.up = UpVector.of(lean);
    idling = scene == Scene.IDLING || scene == Scene.IDLING_AND_WALKING;
    walking = scene == Scene.WALKING || scene == Scene.IDLING_AND_WALKING;
    lineHz = random.nextDouble(24, 34);
    phase = random.nextDouble(TWO_PI);
    tonnes = random.nextDouble(5, 16);
    stayS = random.nextDouble(2, 4);
    for (int p = 0; p < PEOPLE; p++) {
      person[5 * p] = random.nextDouble(-0.9, 0.9);
      person[5 * p + 1] = random.nextDouble(-3, 3);
      kg[p] = random.nextDouble(50, 100);
      choose(p);
    }
  }

  /** Takes the next sample and returns its time, nanoseconds from the start. */
  long next() {
    double t = taken / rateHz;
    double x = up.x();
    double y = up.y();
    double z = up.z();
    if (idling) {
      double turn = TWO_PI * lineHz * t + phase + 0.3 * Math.sin(0.7 * t);
      x += Math.sqrt(2) * (2e-3 * Math.cos(turn) + 11.5e-3 * Math.sin(2 * turn + 1));
      y += Math.sqrt(2) * (21e-3 * Math.sin(turn) + 6e-3 * Math.sin(2 * turn + 2));
      z += Math.sqrt(2) * 18e-3 * Math.sin(turn + 1);
    }
    if (walking) {
      walk(1 / rateHz);
      x -= pitchRad;
      y += rollRad + swayG;
      z += heaveG;
    }
    double sigma = chip.densityG * Math.sqrt(rateHz / 2);
    sample[0] = count(x + sigma * random.nextGaussian());
    sample[1] = count(y + sigma * random.nextGaussian());
    sample[2] = count(z + 1.5 * sigma * random.nextGaussian());
    return Math.round(taken++ / rateHz * 1e9);
  }

  private double count(double g) {
    return Math.rint(g / chip.countG) * chip.countG;
  }

  private void choose(int p) {
    person[5 * p + 2] = random.nextDouble(-0.9, 0.9);
    person[5 * p + 3] = random.nextDouble(-3, 3);
    person[5 * p + 4] = -stayS * Math.log(random.nextDouble(1e-9, 1));
  }

  private void walk(double dtS) {
    rollRad = 0;
    pitchRad = 0;
    boolean anyWalks = false;
    for (int p = 0; p < PEOPLE; p++) {
      int i = 5 * p;
      double dx = person[i + 2] - person[i];
      double dy = person[i + 3] - person[i + 1];
      double far = Math.hypot(dx, dy);
      if (far > 0.01) {
        double go = Math.min(1, 0.8 * dtS / far);
        person[i] += go * dx;
        person[i + 1] += go * dy;
        anyWalks = true;
      } else if ((person[i + 4] -= dtS) < 0) {
        choose(p);
      }
      rollRad += kg[p] * 9.81 * person[i] / (8e4 * tonnes);
      pitchRad += kg[p] * 9.81 * person[i + 1] / (5e5 * tonnes);
    }
    sinceStepS += dtS;
    if (anyWalks && sinceStepS > 1 / 1.9) {
      sinceStepS = 0;
    }
    double ring = Math.exp(-sinceStepS / 0.4);
    heaveG = 6e-3 * ring * Math.sin(TWO_PI * 1.5 * sinceStepS);
    swayG = 1e-3 * ring * Math.sin(TWO_PI * 1.2 * sinceStepS);
  }
}
