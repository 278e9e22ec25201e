package io.pitchwatch.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A chip whose true bias, scale and misalignment are known, held one way after another. */
final class Turntable {

  final Calibration truth;
  private final SplittableRandom random;

  Turntable(long seed) {
    random = new SplittableRandom(seed);
    truth =
        new Calibration(
            new Triad(1 + any(0.1), 1 + any(0.1), 1 + any(0.1)),
            new Triad(any(0.03), any(0.03), any(0.03)),
            new Triad(any(0.15), any(0.15), any(0.25)),
            CalibrationQuality.NONE,
            "");
  }

  private double any(double most) {
    return most * (2 * random.nextDouble() - 1);
  }

  double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  /** The raw sample that the chip makes of a true force, by solving a = T·K·(raw − b). */
  double[] raw(double ax, double ay, double az) {
    Triad t = truth.misalignment();
    double sy = ay - t.x() * ax;
    double sz = az - t.y() * ax - t.z() * sy;
    return new double[] {
      ax / truth.scale().x() + truth.bias().x(),
      sy / truth.scale().y() + truth.bias().y(),
      sz / truth.scale().z() + truth.bias().z()
    };
  }

  /** A pose about a way, held by hand: up to some degrees off, and its mean a little wrong. */
  Pose pose(UpVector way, double slackRad, double errorG) {
    UpVector up =
        UpVector.of(way.x() + any(slackRad), way.y() + any(slackRad), way.z() + any(slackRad));
    double[] raw = raw(up.x(), up.y(), up.z());
    return new Pose(
        raw[0] + errorG * gaussian(),
        raw[1] + errorG * gaussian(),
        raw[2] + errorG * gaussian(),
        errorG);
  }

  static UpVector way(Facing facing) {
    return UpVector.of(facing.x(), facing.y(), facing.z());
  }

  /** Faces and edges, or faces, edges and corners. */
  List<Pose> poses(int mostArrows, double errorG) {
    List<Pose> poses = new ArrayList<>();
    for (Facing facing : Facing.ALL) {
      if (facing.arrows() <= mostArrows) {
        poses.add(pose(way(facing), 0.1, errorG));
      }
    }
    return poses;
  }
}
