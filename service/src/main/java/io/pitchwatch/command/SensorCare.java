package io.pitchwatch.command;

import io.pitchwatch.attitude.Alignment;
import io.pitchwatch.attitude.Calibration;
import io.pitchwatch.attitude.SensorSetup;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.attitude.Zero;
import io.pitchwatch.store.Kept;
import io.pitchwatch.store.Written;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Looks after one sensor at its place: zero, reversal, heading, and the way back from each. Every
 * step says what it found and how far it can be trusted; a refused one changes nothing.
 */
final class SensorCare {

  private static final String ASKEW =
      "the sensor's board leans by more than 55 deg from the mounting that the config names;"
          + " another mounting fits better";

  /** A chip that leans by less than this otherwise than before lies as it did. */
  private static final double SAME_SEAT_RAD = Math.toRadians(10);

  private final SensorPost post;
  private final Kept kept;
  private @Nullable UpVector beforeLeaning;
  private double beforeErrorRad;

  SensorCare(SensorPost post, Kept kept) {
    this.post = post;
    this.kept = kept;
  }

  SensorPost post() {
    return post;
  }

  /** Takes the floor as it stands for level. */
  CareStep zero(long nowNanos, String date) {
    return asItStands(nowNanos, date, this::takeZero);
  }

  private CareStep takeZero(Zero zero) {
    String forgotten = forgetDriftOfAnotherSeat(zero);
    return change(
        post.setup().with(zero),
        "the floor as it stands now is level"
            + CareWords.within(zero.standardErrorRad())
            + "; how true the level was that you trusted comes on top"
            + forgotten);
  }

  /** Which part of its drift a chip shows depends on how it lies; says so if that is forgotten. */
  private String forgetDriftOfAnotherSeat(Zero zero) {
    Zero before = post.setup().zero();
    boolean turned = !before.equals(Zero.NONE) && before.up().angleRad(zero.up()) > SAME_SEAT_RAD;
    if (!post.drift().inChip().isLearnt() || !(turned || post.movedOnItsSeat())) {
      return "";
    }
    forgetDrift();
    return "; it lies otherwise than before, so what was learnt of its drift with temperature is"
        + " forgotten";
  }

  /** Forgets what was learnt of the drift with temperature. */
  CareStep forgetDrift() {
    boolean learnt = post.drift().inChip().isLearnt();
    post.forgetDrift();
    return lasting(
        kept.forgetDrift(post.id()),
        learnt
            ? "what was learnt of the drift with temperature is forgotten; it is learnt anew"
            : "nothing was learnt of a drift with temperature yet");
  }

  /** Does something with the floor as it stands, if that can be read and the board is upright. */
  private CareStep asItStands(long nowNanos, String date, Function<Zero, CareStep> step) {
    Optional<String> unready = post.unready(nowNanos);
    if (unready.isPresent()) {
      return CareStep.refused(unready.get());
    }
    UpVector up = post.upAsMounted(nowNanos);
    if (!(up.totalRad() <= Zero.LARGEST_RAD)) {
      return CareStep.refused(ASKEW);
    }
    return step.apply(
        new Zero(up, post.randomErrorRad(nowNanos), post.temperatureC(nowNanos), date));
  }

  /** Remembers how the floor leans before the coach is turned round on the same spot. */
  CareStep reversalFirst(long nowNanos, String date) {
    return asItStands(
        nowNanos,
        date,
        first ->
            lasting(
                kept.keepReversalFirst(post.id(), first), "first reading of the reversal taken"));
  }

  /** The zero from both readings. */
  CareStep reversalSecond(long nowNanos, String date) {
    Optional<Zero> first = kept.reversalFirst(post.id());
    if (first.isEmpty()) {
      return CareStep.refused("there is no first reading yet");
    }
    Optional<String> unready = post.unready(nowNanos);
    if (unready.isPresent()) {
      return CareStep.refused(unready.get());
    }
    UpVector up = post.upAsMounted(nowNanos);
    double errorRad = Math.max(first.get().standardErrorRad(), post.randomErrorRad(nowNanos));
    double slopeRad = first.get().up().angleRad(up) / 2;
    if (slopeRad > Math.toRadians(15)) {
      return CareStep.refused(
          "the two readings differ as if the ground sloped by "
              + CareWords.degrees(slopeRad)
              + "; the sensor must have been moved in between");
    }
    double temperatureC = (first.get().temperatureC() + post.temperatureC(nowNanos)) / 2;
    Zero zero = Zero.reversal(first.get().up(), up, errorRad, temperatureC, date);
    kept.forgetReversal(post.id());
    return change(
        post.setup().with(zero),
        "zero taken from both readings"
            + CareWords.within(zero.standardErrorRad())
            + "; the ground there slopes by "
            + CareWords.degrees(slopeRad)
            + (slopeRad < 5 * errorRad ? ", too little to tell whether you turned round" : ""));
  }

  CareStep reversalCancelled() {
    return lasting(kept.forgetReversal(post.id()), "reversal cancelled");
  }

  /** Remembers how the floor leans before one end is raised. */
  CareStep alignBefore(long nowNanos) {
    Optional<String> unready = post.unready(nowNanos);
    if (unready.isPresent()) {
      return CareStep.refused(unready.get());
    }
    beforeLeaning = post.upAsZeroed(nowNanos);
    beforeErrorRad = post.randomErrorRad(nowNanos);
    return CareStep.done("reading before the raising taken");
  }

  /** The heading of the board from what raising one end changed. */
  CareStep alignAfter(boolean frontWentUp, long nowNanos, String date) {
    UpVector before = beforeLeaning;
    if (before == null) {
      return CareStep.refused("there is no first reading yet");
    }
    Optional<String> unready = post.unready(nowNanos);
    if (unready.isPresent()) {
      return CareStep.refused(unready.get());
    }
    UpVector after = post.upAsZeroed(nowNanos);
    double errorRad = Math.max(beforeErrorRad, post.randomErrorRad(nowNanos));
    Alignment outcome =
        frontWentUp
            ? Alignment.frontRaised(before, after, errorRad)
            : Alignment.rearRaised(before, after, errorRad);
    if (outcome instanceof Alignment.Found found) {
      beforeLeaning = null;
      return aligned(found.dated(date));
    }
    return CareStep.refused(
        outcome instanceof Alignment.TooSmall small
            ? "the lean changed by "
                + CareWords.degrees(small.changeRad())
                + " only; raise that end until it has changed by "
                + CareWords.degrees(Math.max(small.neededRad(), Math.toRadians(0.5)))
            : "the lean changed the other way: the other end went up, or the mounting is wrong");
  }

  private CareStep aligned(Alignment.Found found) {
    double threeRad = Math.toRadians(3);
    return change(
        post.setup().with(found),
        "the board's forward is turned "
            + CareWords.degrees(Math.abs(found.yawRad()))
            + (found.yawRad() >= 0 ? " to the left" : " to the right")
            + CareWords.within(found.standardErrorRad())
            + "; of 3 deg front to back that made "
            + CareWords.degrees(Math.abs(threeRad * Math.sin(found.yawRad())))
            + " of false lean side to side, now under "
            + CareWords.degrees(
                Math.max(2 * threeRad * found.standardErrorRad(), CareWords.LEAST_SAID_RAD)));
  }

  CareStep alignCancelled() {
    beforeLeaning = null;
    return CareStep.done("align cancelled");
  }

  /** Uses a calibration from now on. */
  CareStep calibrated(Calibration calibration) {
    forgetDrift();
    return change(
        post.setup().with(calibration),
        "calibration accepted; fasten the sensor at its place again, then zero and align");
  }

  /** Goes back to what was before the last change; done twice it is as it was. */
  CareStep undo() {
    SensorSetup before = kept.setupBefore(post.id());
    if (before.equals(post.setup())) {
      return CareStep.refused("there is nothing to go back to");
    }
    return change(before, "back to " + CareWords.of(before));
  }

  /** What an undo would bring back; empty when there is nothing. */
  String undoWords() {
    SensorSetup before = kept.setupBefore(post.id());
    return before.equals(post.setup()) ? "" : CareWords.of(before);
  }

  private CareStep change(SensorSetup next, String said) {
    post.use(next);
    return lasting(kept.keepSetup(post.id(), next), said);
  }

  private static CareStep lasting(Written written, String said) {
    return written instanceof Written.NotLasting trouble
        ? CareStep.done(said + "; BUT " + trouble.trouble().text())
        : CareStep.done(said);
  }
}
