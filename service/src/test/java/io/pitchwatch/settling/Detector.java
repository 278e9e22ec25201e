package io.pitchwatch.settling;

import java.util.List;

/** Something that raises an alarm over minutes: the ground watch and its plain rivals. */
interface Detector {

  /** Takes a minute; true while it holds that the ground is settling. */
  boolean alarmed(MinuteValue minute);

  /** The ground watch as the service runs it. */
  static Detector groundWatch(boolean thermometer) {
    GroundModel model =
        thermometer
            ? GroundModel.withThermometer(Math.toRadians(0.023))
            : GroundModel.withoutThermometer();
    GroundWatch watch =
        new GroundWatch(
            model,
            List.of(new LeanLimit("fridge galley", Math.toRadians(3), Math.toRadians(6))),
            Math.toRadians(0.5));
    return minute -> watch.accept(minute).settling();
  }

  /** Plain threshold: lean so far from that of the first half hour, for ten minutes. */
  final class PlainThreshold implements Detector {
    private final double limitRad;
    private double rollRad;
    private double pitchRad;
    private int first;
    private int beyond;

    PlainThreshold(double limitDeg) {
      limitRad = Math.toRadians(limitDeg);
    }

    @Override
    public boolean alarmed(MinuteValue minute) {
      if (!minute.counts()) {
        return beyond >= 10;
      }
      if (first < 30) {
        first++;
        rollRad += (minute.rollRad() - rollRad) / first;
        pitchRad += (minute.pitchRad() - pitchRad) / first;
      }
      double off =
          Math.max(Math.abs(minute.rollRad() - rollRad), Math.abs(minute.pitchRad() - pitchRad));
      beyond = off > limitRad ? beyond + 1 : 0;
      return beyond >= 10;
    }
  }

  /** Plain linear fit over some hours, looked at every ten minutes: a slope beyond a limit. */
  final class PlainFit implements Detector {
    private final double limitRadPerHour;
    private final double[] rollRad;
    private final double[] pitchRad;
    private long count;
    private boolean alarmed;

    PlainFit(int hours, double limitDegPerHour) {
      limitRadPerHour = Math.toRadians(limitDegPerHour);
      rollRad = new double[hours * 60];
      pitchRad = new double[hours * 60];
    }

    @Override
    public boolean alarmed(MinuteValue minute) {
      if (!minute.counts()) {
        return alarmed;
      }
      int at = (int) (count++ % rollRad.length);
      rollRad[at] = minute.rollRad();
      pitchRad[at] = minute.pitchRad();
      if (count >= rollRad.length && count % 10 == 0) {
        alarmed = Math.max(slope(rollRad), slope(pitchRad)) > limitRadPerHour;
      }
      return alarmed;
    }

    private double slope(double[] ring) {
      LinearFit fit = new LinearFit();
      for (int i = 0; i < ring.length; i++) {
        fit.add(i / 60.0, ring[(int) ((count + i) % ring.length)]);
      }
      return Math.abs(fit.slope());
    }
  }
}
