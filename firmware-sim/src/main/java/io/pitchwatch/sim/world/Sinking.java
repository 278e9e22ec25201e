package io.pitchwatch.sim.world;

/** The ground under a wheel sinks by a given depth in a given time. */
final class Sinking implements Stance.Change {

  private static final double QUICK_S = 120;

  private final double startS;
  private final double overS;
  private final Happenings.Wheel wheel;
  private final Happenings.Sink sink;
  private double sunkM;

  Sinking(double startS, double overS, Happenings.Wheel wheel, Happenings.Sink sink) {
    this.startS = startS;
    this.overS = overS;
    this.wheel = wheel;
    this.sink = sink;
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
    return overS > QUICK_S ? 60 : 1;
  }

  @Override
  public void act(double timeS, Parking parking) {
    double soFarM = sink.depthM() * sink.course().at(timeS - startS, overS);
    parking.sink(wheel.axle(), wheel.side(), soFarM - sunkM);
    sunkM = soFarM;
  }
}
