package io.pitchwatch.comfort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.attitude.UpVector;
import io.pitchwatch.coach.Direction;
import io.pitchwatch.coach.Door;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The roots found analytically against the definition, looked at angle by angle. */
class DoorTendencyPropertyTest {

  private static final long SEED = 4711;
  private static final int ANGLES = 20_000;

  @Test
  void tendencyIsTheSignOfTheDriveWhereverItExceedsTheHold() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      Door door = door(random);
      UpVector up = UpVector.of(Lean.ofDegrees(random.nextDouble(-3, 3), random.nextDouble(-3, 3)));
      assertEquals(
          byLooking(door, up),
          DoorReport.of(door, up).tendency(),
          () -> "seed " + SEED + ", " + door + ", " + up);
    }
  }

  private static Door door(SplittableRandom random) {
    Direction[] all = Direction.values();
    Direction shut = all[random.nextInt(4)];
    Direction open = all[random.nextInt(4)];
    while (shut.x() * open.x() + shut.y() * open.y() != 0) {
      open = all[random.nextInt(4)];
    }
    double swing = Math.toRadians(random.nextDouble(10, 300));
    return new Door("any", shut, open, swing, Math.toRadians(random.nextDouble(0, 1.5)), 600);
  }

  private static DoorTendency byLooking(Door door, UpVector up) {
    boolean opens = false;
    boolean shuts = false;
    for (int i = 0; i <= ANGLES; i++) {
      double angle = door.swingRad() * i / ANGLES;
      double alongX =
          -Math.sin(angle) * door.shutTowards().x() + Math.cos(angle) * door.opensTowards().x();
      double alongY =
          -Math.sin(angle) * door.shutTowards().y() + Math.cos(angle) * door.opensTowards().y();
      double drive = -(up.x() * alongX + up.y() * alongY);
      opens |= drive > Math.sin(door.holdsRad());
      shuts |= drive < -Math.sin(door.holdsRad());
    }
    if (opens && shuts) {
      return DoorTendency.EITHER;
    }
    return opens ? DoorTendency.DRIFTS_OPEN : shuts ? DoorTendency.DRIFTS_SHUT : DoorTendency.STAYS;
  }
}
