package io.pitchwatch.attitude;

import io.pitchwatch.attitude.CalibrationOutcome.Clustered;
import io.pitchwatch.attitude.CalibrationOutcome.Fitted;
import io.pitchwatch.attitude.CalibrationOutcome.Misfit;
import io.pitchwatch.attitude.CalibrationOutcome.NoFit;
import io.pitchwatch.attitude.CalibrationOutcome.TooFew;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Leads somebody with a chip in their hands through a calibration: takes each new pose by itself as
 * soon as it is held still, says which is wanted next, and refuses one that is like another.
 *
 * <p>Wanted are the six faces of a cube, then its twelve edges; any other way counts as well. From
 * twelve poses on there is a calibration if they span the sphere; the rest makes it better.
 */
public final class PoseGuide {

  /** Poses nearer to each other than this tell the same, radians. */
  private static final double ALIKE_RAD = Math.toRadians(20);

  /** A way counts as held when the chip comes this near to it, radians. */
  private static final double NEAR_RAD = Math.toRadians(25);

  /** Faces and edges. */
  private static final List<Facing> WANTED =
      Facing.ALL.stream().filter(facing -> facing.arrows() < 3).toList();

  private final PoseWatch watch;
  private final Calibration before;
  private final String date;
  private final List<Pose> poses = new ArrayList<>();
  private CalibrationOutcome outcome = new TooFew(0, CalibrationFit.FEWEST_POSES);
  private String said = "";

  /**
   * A guide at the beginning.
   *
   * @param watch finds the poses
   * @param before the calibration so far, to compare with
   * @param date a label for the new one, for people
   */
  public PoseGuide(PoseWatch watch, Calibration before, String date) {
    this.watch = watch;
    this.before = before;
    this.date = date;
  }

  /**
   * Takes one raw sample.
   *
   * @param nanos monotonic time at which it was taken
   * @param x raw, g
   * @param y raw, g
   * @param z raw, g
   * @return whether there is something new to say
   */
  public boolean accept(long nanos, double x, double y, double z) {
    long heldBefore = watch.heldNanos();
    watch.accept(nanos, x, y, z);
    long held = watch.heldNanos();
    boolean justHeld = heldBefore < PoseWatch.HELD_NANOS && held >= PoseWatch.HELD_NANOS;
    return justHeld && watch.pose().map(this::offer).orElse(false);
  }

  private boolean offer(Pose pose) {
    int alike = alike(up(pose));
    if (alike >= 0) {
      said = "not taken: nearly the same as pose " + (alike + 1) + "; turn it further";
      return true;
    }
    poses.add(pose);
    said = "pose " + poses.size() + " taken";
    outcome = CalibrationFit.of(poses, before, date);
    if (outcome instanceof Misfit misfit) {
      Facing facing = PoseGuide.nearest(up(poses.get(misfit.pose())));
      poses.remove(misfit.pose());
      outcome = CalibrationFit.of(poses, before, date);
      said =
          "the pose with "
              + facing.words()
              + " does not fit with the others and was dropped: it moved, or another touched it";
    }
    return true;
  }

  private UpVector up(Pose pose) {
    double[] a = new double[3];
    before.apply(pose.x(), pose.y(), pose.z(), a);
    return UpVector.of(a[0], a[1], a[2]);
  }

  private int alike(UpVector up) {
    for (int i = 0; i < poses.size(); i++) {
      if (up.angleRad(up(poses.get(i))) < ALIKE_RAD) {
        return i;
      }
    }
    return -1;
  }

  private static Facing nearest(UpVector up) {
    Facing nearest = Facing.ALL.get(0);
    for (Facing facing : Facing.ALL) {
      if (facing.angleRad(up) < nearest.angleRad(up)) {
        nearest = facing;
      }
    }
    return nearest;
  }

  /** How many poses were taken. */
  public int taken() {
    return poses.size();
  }

  /** The way to hold the chip next; empty when every face and edge was held. */
  public Optional<Facing> next() {
    UpVector[] ups = poses.stream().map(this::up).toArray(UpVector[]::new);
    for (int arrows = 1; arrows <= 2; arrows++) {
      for (Facing facing : WANTED) {
        if (facing.arrows() == arrows && PoseSpan.gapRad(facing, ups) > NEAR_RAD) {
          return Optional.of(facing);
        }
      }
    }
    return Optional.empty();
  }

  /** What became of the pose offered last, one sentence without its full stop; may be empty. */
  public String said() {
    return said;
  }

  /** What to do next, one sentence without its full stop. */
  public String wanted() {
    String hold =
        next().map(facing -> "hold it still for 2 s with " + facing.words()).orElse("accept");
    if (calibration().isPresent()) {
      return next().isPresent() ? "accept, or for a better one " + hold : hold;
    }
    return hold;
  }

  /** The calibration by the poses so far, once there is one. */
  public Optional<Calibration> calibration() {
    return outcome instanceof Fitted fitted ? Optional.of(fitted.calibration()) : Optional.empty();
  }

  /** Why there is no calibration yet, one sentence without its full stop; empty if there is one. */
  public String lacking() {
    if (outcome instanceof TooFew few) {
      return few.poses()
          + (few.poses() == 1 ? " pose" : " poses")
          + "; at least "
          + few.needed()
          + " are needed";
    }
    if (outcome instanceof Clustered clustered) {
      return "the poses lie too near each other; none is within "
          + Math.round(Math.toDegrees(clustered.gapRad()))
          + " deg of "
          + clustered.missing().words();
    }
    return outcome instanceof NoFit || outcome instanceof Misfit
        ? "the poses do not fit with each other"
        : "";
  }
}
