package io.pitchwatch.sim.world;

/**
 * What all influences together do to the coach at one instant; an accumulator that is reused.
 *
 * <p>Lean adds to the lean of the coach at rest. Accelerations are those of the sensor's place
 * along the coach's axes. The sensor sits above the roll axis by {@link #armM}, so that rocking
 * also throws it sideways.
 */
final class Sway {

  /** Standard acceleration of gravity, m/s² (CGPM 1901). */
  static final double G = 9.80665;

  private static final double TWO_PI = 2 * Math.PI;

  final double armM;
  double cornerHz = Double.POSITIVE_INFINITY;
  double rollRad;
  double pitchRad;
  double forwardG;
  double leftG;
  double upG;

  Sway(double armM) {
    this.armM = armM;
  }

  void clear() {
    rollRad = 0;
    pitchRad = 0;
    forwardG = 0;
    leftG = 0;
    upG = 0;
  }

  void add(Sway other) {
    rollRad += other.rollRad;
    pitchRad += other.pitchRad;
    forwardG += other.forwardG;
    leftG += other.leftG;
    upG += other.upG;
  }

  /** Slow lean, too slow to throw anything. */
  void lean(double roll, double pitch) {
    rollRad += roll;
    pitchRad += pitch;
  }

  /** Rocking φ = A sin ωt to the side: its lean and, arm·A·ω² sin ωt, its throw. */
  void rockSideways(double amplitudeRad, double hz, double sine) {
    double omega = TWO_PI * hz;
    rollRad += amplitudeRad * sine;
    leftG += armM * amplitudeRad * omega * omega / G * sine;
  }

  /** Rocking θ = A sin ωt front to back. */
  void rockLengthways(double amplitudeRad, double hz, double sine) {
    double omega = TWO_PI * hz;
    pitchRad += amplitudeRad * sine;
    forwardG -= armM * amplitudeRad * omega * omega / G * sine;
  }

  /**
   * How a one-pole filter weakens a line: 1/√(1 + (f/fc)²).
   *
   * @param hz the line
   */
  double gain(double hz) {
    double ratio = hz / cornerHz;
    return 1 / Math.sqrt(1 + ratio * ratio);
  }

  /** How far a one-pole filter lets a line lag: atan(f/fc), radians. */
  double lagRad(double hz) {
    return Math.atan(hz / cornerHz);
  }
}
