package io.pitchwatch.comfort;

import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Door;
import io.pitchwatch.comfort.DoorMotion.End;

/**
 * What a door does on a leaning floor.
 *
 * @param id the owner's name for it
 * @param tendency what it does by itself
 * @param restRad opening angle where a leaf without friction comes to rest from anywhere, radians:
 *     0 is shut; NaN where that depends on where it was let go, or it stays everywhere
 * @param letGo the motion of the leaf let go at its stop, or, where friction holds it there, at the
 *     angle of the strongest drive towards shut
 */
public record DoorReport(String id, DoorTendency tendency, double restRad, DoorMotion letGo) {

  /** Longest motion that is followed, seconds. */
  private static final double LONGEST_SECONDS = 120;

  private static final double MM_PER_METRE = 1000;

  /**
   * A door on a floor that leans.
   *
   * @param door the door
   * @param up where up is, seen from the coach
   * @throws IllegalArgumentException if a component is NaN: an unknown lean moves no door
   */
  public static DoorReport of(Door door, UpVector up) {
    DoorDrive drive = new DoorDrive(door, up);
    if (Double.isNaN(drive.amplitude())) {
      throw new IllegalArgumentException("up is " + up + "; it must be known");
    }
    DoorMotion fromStop = letGo(door, up, door.swingRad());
    boolean heldThere = fromStop.end() == End.STOP || fromStop.seconds() == 0;
    DoorMotion motion = heldThere ? letGo(door, up, drive.hardestShutRad()) : fromStop;
    return new DoorReport(door.id(), drive.tendency(), drive.restRad(), motion);
  }

  /**
   * The motion of a leaf let go at rest.
   *
   * @param door the door
   * @param up where up is, seen from the coach
   * @param fromRad opening angle at the start, radians, 0 to the door's swing
   * @throws IllegalArgumentException if the angle is outside the swing
   */
  public static DoorMotion letGo(Door door, UpVector up, double fromRad) {
    if (!(fromRad >= 0 && fromRad <= door.swingRad())) {
      throw new IllegalArgumentException(
          "fromRad is " + fromRad + "; it must be 0 to " + door.swingRad());
    }
    double width = door.widthMm() / MM_PER_METRE;
    LeafSwing leaf = new LeafSwing(new DoorDrive(door, up), width, fromRad);
    boolean swings = true;
    while (swings && !leaf.pressed(door.swingRad())) {
      swings = leaf.swingOnce(door.swingRad(), LONGEST_SECONDS);
    }
    double speed = Math.abs(leaf.speedRadPerSecond()) * width;
    return new DoorMotion(endOf(leaf, door), leaf.openRad(), leaf.seconds(), speed);
  }

  private static End endOf(LeafSwing leaf, Door door) {
    if (leaf.openRad() == 0) {
      return End.SHUT;
    }
    if (leaf.openRad() == door.swingRad()) {
      return End.STOP;
    }
    return leaf.held() ? End.RESTS : End.SWINGS;
  }
}
