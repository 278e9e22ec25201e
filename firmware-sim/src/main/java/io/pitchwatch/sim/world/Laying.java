package io.pitchwatch.sim.world;

/** A wheel is driven onto a stack, or off it, at an even pace. */
final class Laying implements Stance.Change {

  private final double startS;
  private final double overS;
  private final Happenings.Wheel wheel;
  private final Stack stack;
  private double fromM = Double.NaN;
  private boolean done;

  Laying(double startS, double overS, Happenings.Wheel wheel, Stack stack) {
    this.startS = startS;
    this.overS = overS;
    this.wheel = wheel;
    this.stack = stack;
  }

  @Override
  public double startS() {
    return startS;
  }

  @Override
  public double overS() {
    return overS;
  }

  @Override
  public double stepS(double timeS) {
    return 1;
  }

  @Override
  public void act(double timeS, Parking parking) {
    if (done) {
      return;
    }
    if (Double.isNaN(fromM)) {
      fromM = parking.layM(wheel.axle(), wheel.side());
    }
    double share = Course.LINEAR.at(timeS - startS, overS);
    double heightM = fromM + share * (stack.heightM() - fromM);
    parking.lay(wheel.axle(), wheel.side(), new Stack(heightM, stack.areaM2()));
    done = share >= 1;
  }
}
