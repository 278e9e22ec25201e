package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.List;

/**
 * What will happen to the coach, collected before the world begins. Times are seconds of scenario
 * time; an end may be infinite.
 */
public final class Happenings {

  private static final long SEED_STRIDE = 0x632BE59BD9B4E019L;

  private final List<Influence> influences = new ArrayList<>();
  private final Stands stands;
  private long seed;

  /**
   * Nothing yet.
   *
   * @param seed of everything random in it
   * @param attitude how the coach leans where it stands first
   */
  public Happenings(long seed, Attitude attitude) {
    this.seed = seed;
    this.stands = new Stands(attitude);
  }

  /**
   * The engine idles.
   *
   * @param startS from
   * @param endS until
   * @param lineHz its main line, Hz
   * @param levelG spread across the coach, standard deviation, g
   */
  public void engine(double startS, double endS, double lineHz, double levelG) {
    influences.add(new Engine(startS, endS, lineHz, levelG, nextSeed()));
  }

  /**
   * People walk about.
   *
   * @param startS from
   * @param endS until
   * @param people how many
   * @param leanRad lean when one of them stands at the side, radians
   */
  public void walk(double startS, double endS, int people, double leanRad) {
    influences.add(new Walking(startS, endS, people, leanRad, nextSeed()));
  }

  /**
   * Wind rocks the coach.
   *
   * @param startS from
   * @param endS until
   * @param rockRad standard deviation of the rocking in strong gusts, radians
   */
  public void wind(double startS, double endS, double rockRad) {
    influences.add(new Wind(startS, endS, rockRad, nextSeed()));
  }

  /**
   * A lean comes and stays until the coach sets off.
   *
   * @param startS from
   * @param overS how long it takes to come
   * @param course how it goes on the way
   * @param lean what it adds
   */
  public void shift(double startS, double overS, Course course, Attitude lean) {
    influences.add(
        new Shift(
            startS, Double.POSITIVE_INFINITY, overS, course, lean.rollRad(), lean.pitchRad()));
  }

  /**
   * The coach drives to its next stand.
   *
   * @param startS when it sets off
   * @param brakeS when it begins to brake
   * @param endS when it stands
   * @param speedMps at what speed it goes between, m/s
   * @param attitude how it leans at the next stand
   */
  public void travel(
      double startS, double brakeS, double endS, double speedMps, Attitude attitude) {
    influences.add(new Travel(startS, brakeS, endS, speedMps, nextSeed()));
    stands.move(startS, endS, attitude);
  }

  /** The world in which all this happens. */
  public CoachWorld in(Climate climate) {
    return new CoachWorld(stands, List.copyOf(influences), climate);
  }

  private long nextSeed() {
    seed += SEED_STRIDE;
    return seed;
  }
}
