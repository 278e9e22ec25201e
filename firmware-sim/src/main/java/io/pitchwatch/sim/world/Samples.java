package io.pitchwatch.sim.world;

import java.util.Arrays;

/** The lean at rising instants, kept in bare arrays: months of minutes are many. */
final class Samples {

  private double[] timeS = new double[16];
  private double[] rollRad = new double[16];
  private double[] pitchRad = new double[16];
  private int count;

  void add(double seconds, Attitude attitude) {
    if (count == timeS.length) {
      timeS = Arrays.copyOf(timeS, 2 * count);
      rollRad = Arrays.copyOf(rollRad, 2 * count);
      pitchRad = Arrays.copyOf(pitchRad, 2 * count);
    }
    timeS[count] = seconds;
    rollRad[count] = attitude.rollRad();
    pitchRad[count] = attitude.pitchRad();
    count++;
  }

  double lastS() {
    return timeS[count - 1];
  }

  /** The piece in which an instant lies: from the last sample at or before it to the next. */
  Stance.Piece piece(double seconds) {
    int found = Arrays.binarySearch(timeS, 0, count, seconds);
    int from = Math.max(0, found >= 0 ? found : -found - 2);
    int to = Math.min(from + 1, count - 1);
    return new Stance.Piece(timeS[from], timeS[to], at(from), at(to));
  }

  private Attitude at(int index) {
    return new Attitude(rollRad[index], pitchRad[index]);
  }
}
