package io.pitchwatch.sim.world;

/** A pair of jacks is run out or taken up, at an even pace. */
final class Jacking implements Stance.Change {

  private final double startS;
  private final double overS;
  private final String pair;
  private final Happenings.JackOrder order;
  private double raisedM;
  private boolean begun;
  private boolean done;

  Jacking(double startS, double overS, String pair, Happenings.JackOrder order) {
    this.startS = startS;
    this.overS = overS;
    this.pair = pair;
    this.order = order;
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
    if (!begun && order.leftPadM() + order.rightPadM() > 0) {
      parking.pad(pair, order.leftPadM(), order.rightPadM());
    }
    begun = true;
    double share = Course.LINEAR.at(timeS - startS, overS);
    if (!order.up()) {
      parking.raise(pair, share * order.raiseM() - raisedM);
      raisedM = share * order.raiseM();
    } else if (share >= 1) {
      parking.retract(pair);
    }
    done = share >= 1;
  }
}
