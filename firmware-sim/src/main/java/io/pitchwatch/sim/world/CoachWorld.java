package io.pitchwatch.sim.world;

import java.util.List;

/**
 * The coach on its ground over time. It does not change; {@link #seat} gives places in it from
 * which motion is felt.
 */
public final class CoachWorld {

  private final Stands stands;
  private final List<Influence> influences;
  private final Climate climate;

  CoachWorld(Stands stands, List<Influence> influences, Climate climate) {
    this.stands = stands;
    this.influences = influences;
    this.climate = climate;
  }

  /**
   * A place in the coach; not to be shared between threads.
   *
   * @param armM how far it lies above the axis about which the coach rocks, metres
   */
  public Seat seat(double armM) {
    return new Seat(this, armM);
  }

  /** Temperature where the sensor sits, degrees Celsius, at a time in seconds. */
  public double temperatureC(double timeS) {
    return climate.at(timeS);
  }

  /** Whether the coach is under way at a time in seconds. */
  public boolean underWay(double timeS) {
    return stands.underWay(timeS);
  }

  Stands stands() {
    return stands;
  }

  List<Influence> influences() {
    return influences;
  }
}
