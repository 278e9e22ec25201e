package io.pitchwatch.floor;

import io.pitchwatch.attitude.UpVector;

/**
 * Notices that a sensor was moved on its seat while the coach stood: from one rest to the next, in
 * less time than a coach needs to drive anywhere, the lean jumps further than jacks, blocks or
 * slide-outs take it so fast, or the magnitude of gravity changes, which a chip's biases make of a
 * turn and which no lean of the coach explains. All figures are our own.
 */
public final class SeatWatch {

  /** A coach that drove somewhere else was longer away from rest than this. */
  private static final long DRIVE_NANOS = 20_000_000_000L;

  private static final double JUMP_RAD = Math.toRadians(4);
  private static final double MAGNITUDE_JUMP_G = 15e-3;

  /** A magnitude changes with temperature, over hours; it is followed at this share a reading. */
  private static final double FOLLOW = 0.01;

  private UpVector up = UpVector.LEVEL;
  private double magnitudeG = Double.NaN;
  private long restNanos;
  private boolean moved;

  /** Forgets everything: the sensor was zeroed, or is in somebody's hand. */
  public void restart() {
    magnitudeG = Double.NaN;
    moved = false;
  }

  /**
   * Takes a reading.
   *
   * @param reading the floor as the sensor reads it
   * @param nowMagnitudeG magnitude of the steady force, g
   */
  public void accept(FloorReading reading, double nowMagnitudeG) {
    if (reading.state() != FloorState.STEADY || Double.isNaN(nowMagnitudeG)) {
      return;
    }
    UpVector now = UpVector.of(reading.steady());
    boolean soon = reading.takenAtNanos() - restNanos < DRIVE_NANOS;
    boolean jumped =
        up.angleRad(now) > JUMP_RAD || Math.abs(nowMagnitudeG - magnitudeG) > MAGNITUDE_JUMP_G;
    boolean first = Double.isNaN(magnitudeG);
    moved |= !first && soon && jumped;
    up = now;
    magnitudeG =
        first || jumped ? nowMagnitudeG : magnitudeG + FOLLOW * (nowMagnitudeG - magnitudeG);
    restNanos = reading.takenAtNanos();
  }

  /** Whether the sensor was moved since the last restart. */
  public boolean moved() {
    return moved;
  }
}
