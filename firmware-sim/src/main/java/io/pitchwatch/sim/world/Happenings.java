package io.pitchwatch.sim.world;

import java.util.ArrayList;
import java.util.List;

/**
 * What will happen to the coach, collected before the world begins, in order of time. Times are
 * seconds of scenario time; an end may be infinite.
 */
public final class Happenings {

  private static final long SEED_STRIDE = 0x632BE59BD9B4E019L;
  private static final double LEAST_S = 1e-3;

  private final Chassis chassis;
  private final List<Influence> influences = new ArrayList<>();
  private final List<Shift> shifts = new ArrayList<>();
  private final List<Stand> stands = new ArrayList<>();
  private final List<Double> leavesS = new ArrayList<>();
  private List<Stance.Change> changes = new ArrayList<>();
  private final List<Rain.Shower> showers = new ArrayList<>();
  private Site site;
  private double restsFromS = Double.NEGATIVE_INFINITY;
  private long seed;

  /**
   * Nothing yet.
   *
   * @param seed of everything random in it
   * @param chassis the coach
   * @param site where it stands first
   */
  public Happenings(long seed, Chassis chassis, Site site) {
    this.seed = seed;
    this.chassis = chassis;
    this.site = site;
  }

  /** The coach. */
  public Chassis chassis() {
    return chassis;
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
    shifts.add(
        new Shift(
            startS,
            Double.POSITIVE_INFINITY,
            Math.max(LEAST_S, overS),
            course,
            lean.rollRad(),
            lean.pitchRad()));
  }

  /**
   * A wheel is driven onto a stack, or off it.
   *
   * @param startS from
   * @param overS how long it takes
   * @param wheel which
   * @param stack what then lies under it
   */
  public void lay(double startS, double overS, Wheel wheel, Stack stack) {
    chassis.axle(wheel.axle());
    changes.add(new Laying(startS, Math.max(LEAST_S, overS), wheel, stack));
  }

  /**
   * A pair of jacks is run out or taken up.
   *
   * @param startS from
   * @param overS how long it takes
   * @param pair its id
   * @param order what is done with it
   */
  public void jack(double startS, double overS, String pair, JackOrder order) {
    chassis.jackPair(pair);
    changes.add(new Jacking(startS, Math.max(LEAST_S, overS), pair, order));
  }

  /**
   * The ground under a wheel sinks.
   *
   * @param startS from
   * @param overS how long it takes
   * @param wheel which
   * @param sink how deep, and how it goes on the way
   */
  public void sink(double startS, double overS, Wheel wheel, Sink sink) {
    chassis.axle(wheel.axle());
    changes.add(new Sinking(startS, Math.max(LEAST_S, overS), wheel, sink));
  }

  /** Rain falls on the ground. */
  public void rain(Rain.Shower shower) {
    showers.add(shower);
  }

  /**
   * The coach drives to its next stand; what was laid stays behind, jacks are taken up.
   *
   * @param trip when and how fast
   * @param to where it stands then
   */
  public void travel(Trip trip, Site to) {
    influences.add(new Travel(trip, nextSeed()));
    endStand(trip.startS());
    leavesS.add(trip.startS());
    restsFromS = trip.endS();
    site = to;
  }

  /** The world in which all this happens. */
  public CoachWorld in(Climate climate) {
    endStand(Double.POSITIVE_INFINITY);
    Rain rain = new Rain(showers);
    List<Stance> stances = stands.stream().map(stand -> stand.in(chassis, rain, seed)).toList();
    return new CoachWorld(new Stands(stances, leavesS), List.copyOf(influences), climate);
  }

  private void endStand(double leaveS) {
    shifts.forEach(shift -> influences.add(shift.until(leaveS)));
    shifts.clear();
    stands.add(new Stand(restsFromS, site, changes));
    changes = new ArrayList<>();
  }

  private long nextSeed() {
    seed += SEED_STRIDE;
    return seed;
  }

  private record Stand(double startS, Site site, List<Stance.Change> changes) {

    Stance in(Chassis chassis, Rain rain, long seed) {
      List<Stance.Change> all = new ArrayList<>(changes);
      if (site.soil().moves()) {
        double[] weakness = new double[2 * chassis.axles().size()];
        for (int wheel = 0; wheel < weakness.length; wheel++) {
          double lot = 2 * SmoothNoise.uniform(seed + Double.hashCode(startS), wheel) - 1;
          weakness[wheel] = 1 + site.uneven() * lot;
        }
        all.add(new Subsoil(Math.max(0, startS), site.soil(), rain, weakness));
      }
      return new Stance(startS, chassis, site.ground(), all);
    }
  }

  /**
   * A wheel station.
   *
   * @param axle id of the axle
   * @param side left or right
   */
  public record Wheel(String axle, Side side) {}

  /**
   * How the ground sinks.
   *
   * @param depthM how deep, metres
   * @param course how it goes on the way
   */
  public record Sink(double depthM, Course course) {}

  /**
   * A trip.
   *
   * @param startS when it sets off
   * @param brakeS when it begins to brake
   * @param endS when it stands
   * @param speedMps at what speed it goes between, m/s
   */
  public record Trip(double startS, double brakeS, double endS, double speedMps) {}

  /**
   * What is done with a pair of jacks.
   *
   * @param raiseM how far beyond contact, or beyond where it is, metres
   * @param leftPadM pads put under its left foot before, metres
   * @param rightPadM pads put under its right foot before, metres
   * @param up whether it is taken up instead
   */
  public record JackOrder(double raiseM, double leftPadM, double rightPadM, boolean up) {}
}
