package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place in the coach from which its motion is felt. Times may be asked in any order; asking them
 * in order is fast, since what stands still is kept.
 *
 * <p>Vibration lines are weakened and delayed analytically as a one-pole filter does it; slow
 * motion, far below any filter here, passes unchanged.
 */
public final class Seat {

  /** A turn not worth working out anew: a hundredth of a millionth of g. */
  private static final double NOTHING_RAD = 1e-8;

  private final CoachWorld world;
  private final Sway sway;
  private final Sway standing;
  private final List<Influence> moving = new ArrayList<>();
  private double validFromS = Double.POSITIVE_INFINITY;
  private double validUntilS = Double.NEGATIVE_INFINITY;
  private boolean underWay;
  private Stance.@Nullable Piece piece;
  private double upRollRad = Double.NaN;
  private double upPitchRad = Double.NaN;
  private double upX;
  private double upY;
  private double upZ;

  Seat(CoachWorld world, double armM) {
    this.world = world;
    this.sway = new Sway(armM);
    this.standing = new Sway(armM);
  }

  /**
   * Specific force along the coach's axes after a one-pole low-pass.
   *
   * @param timeS scenario time, seconds
   * @param cornerHz of the filter, Hz; infinity for none
   * @param outG receives forward, left, up in g
   */
  public void specificForce(double timeS, double cornerHz, double[] outG) {
    gather(timeS, cornerHz);
    double turnedRad =
        Math.max(Math.abs(sway.rollRad - upRollRad), Math.abs(sway.pitchRad - upPitchRad));
    if (!(turnedRad <= NOTHING_RAD)) {
      turnUp(sway.rollRad, sway.pitchRad);
    }
    outG[0] = upX + sway.forwardG;
    outG[1] = upY + sway.leftG;
    outG[2] = upZ + sway.upG;
  }

  /** How the floor lies at a time in seconds, rocking included. */
  public Attitude attitude(double timeS) {
    gather(timeS, Double.POSITIVE_INFINITY);
    return new Attitude(sway.rollRad, sway.pitchRad);
  }

  private void gather(double timeS, double cornerHz) {
    if (timeS < validFromS || timeS >= validUntilS) {
      sortOut(timeS);
    }
    sway.clear();
    sway.cornerHz = cornerHz;
    sway.add(standing);
    for (int i = 0; i < moving.size(); i++) {
      moving.get(i).add(timeS, sway);
    }
    if (piece != null) {
      sway.lean(piece.rollRad(timeS), piece.pitchRad(timeS));
    } else if (underWay) {
      world.stands().addUnderWay(timeS, sway);
    }
  }

  /** Parts what moves from what stands still, and finds until when that holds. */
  private void sortOut(double timeS) {
    validFromS = timeS;
    validUntilS = world.stands().nextChangeS(timeS);
    moving.clear();
    standing.clear();
    for (Influence influence : world.influences()) {
      double startS = influence.startS();
      double steadyS = influence.steadyFromS();
      if (timeS < startS) {
        validUntilS = Math.min(validUntilS, startS);
      } else if (timeS < influence.endS()) {
        validUntilS = Math.min(validUntilS, influence.endS());
        if (timeS >= steadyS) {
          influence.add(timeS, standing);
        } else {
          validUntilS = Math.min(validUntilS, steadyS);
          moving.add(influence);
        }
      }
    }
    piece = null;
    underWay = world.underWay(timeS);
    if (!underWay) {
      Stance.Piece found = world.stands().piece(timeS);
      validUntilS = Math.min(validUntilS, found.toS());
      if (found.isSteady()) {
        standing.lean(found.to().rollRad(), found.to().pitchRad());
      } else {
        piece = found;
      }
    }
  }

  /** u = (−sin θ, cos θ sin φ, cos θ cos φ), NXP AN3461 equations 25 and 26. */
  private void turnUp(double rollRad, double pitchRad) {
    upRollRad = rollRad;
    upPitchRad = pitchRad;
    upX = -Math.sin(pitchRad);
    upY = Math.cos(pitchRad) * Math.sin(rollRad);
    upZ = Math.cos(pitchRad) * Math.cos(rollRad);
  }
}
