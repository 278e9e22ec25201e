package io.pitchwatch.sim.world;

import java.util.List;
import java.util.Optional;

/**
 * The coach in equilibrium.
 *
 * @param attitude how its floor lies
 * @param wheels axle by axle, left then right
 * @param jacks pair by pair, left then right
 */
public record Pose(Attitude attitude, List<Wheel> wheels, List<Jack> jacks) {

  /** Copies the lists. */
  public Pose {
    wheels = List.copyOf(wheels);
    jacks = List.copyOf(jacks);
  }

  /**
   * A wheel station.
   *
   * @param axle id of its axle
   * @param side left or right
   * @param parkingBrake whether it holds the parking brake
   * @param loadN what it carries, newtons
   */
  public record Wheel(String axle, Side side, boolean parkingBrake, double loadN) {

    /** Whether it carries nothing. */
    public boolean hangs() {
      return loadN <= 0;
    }
  }

  /**
   * A jack.
   *
   * @param pair id of its pair
   * @param side left or right
   * @param loadN what it carries, newtons
   * @param travelM how far it is run out, metres
   * @param strokeM how far it can be, metres
   * @param capacityN its rated load, newtons
   */
  public record Jack(
      String pair, Side side, double loadN, double travelM, double strokeM, double capacityN) {

    /** Whether it is run out further than it goes. */
    public boolean overStroke() {
      return travelM > strokeM;
    }

    /** Whether it carries more than it is rated for. */
    public boolean overloaded() {
      return loadN > capacityN;
    }
  }

  /** A wheel station. */
  public Optional<Wheel> wheel(String axle, Side side) {
    return wheels.stream().filter(w -> w.axle().equals(axle) && w.side() == side).findFirst();
  }

  /** A jack. */
  public Optional<Jack> jack(String pair, Side side) {
    return jacks.stream().filter(j -> j.pair().equals(pair) && j.side() == side).findFirst();
  }

  /** Whether a tyre of the parking brake hangs. */
  public boolean brakedTyreHangs() {
    return wheels.stream().anyMatch(wheel -> wheel.parkingBrake() && wheel.hangs());
  }
}
