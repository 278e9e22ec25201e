package io.pitchwatch.sim.scenario;

import io.pitchwatch.sim.chip.Surroundings;

/**
 * A recording as what a chip feels. The first sample falls on scenario time 0.
 *
 * <p>Slower than, or about as fast as, the chip samples: the last recorded sample stands until the
 * next one, unchanged, since it has been through a sensor's band limit already. Markedly faster: a
 * one-pole low-pass with the chip's corner runs over the recorded samples. Stretched in time:
 * straight lines between samples, or every value would stand for seconds as no real sensor's does.
 */
final class Playback implements Surroundings {

  private static final double NANOS_PER_SECOND = 1e9;
  private static final double MARKEDLY_FASTER = 1.5;

  /** After so many samples a low-pass has forgotten how it began. */
  private static final int MEMORY = 64;

  private final Recording recording;
  private final boolean loop;
  private final double stretch;
  private final double[] filtered = new double[3];
  private int filteredTo = -1;

  Playback(Recording recording, boolean loop, double stretch) {
    this.recording = recording;
    this.loop = loop;
    this.stretch = stretch;
  }

  @Override
  public void specificForce(long nanos, double cornerHz, double[] outG) {
    double seconds = recordedS(nanos);
    int index = recording.at(seconds);
    if (stretch > 1) {
      interpolate(seconds, index, outG);
    } else if (recording.rateHz() / stretch > MARKEDLY_FASTER * 2 * cornerHz) {
      filterTo(index, cornerHz * stretch);
      System.arraycopy(filtered, 0, outG, 0, 3);
    } else {
      for (int axis = 0; axis < 3; axis++) {
        outG[axis] = recording.forceG(axis, index);
      }
    }
  }

  @Override
  public double temperatureC(long nanos) {
    return recording.temperatureC(recording.at(recordedS(nanos)));
  }

  /** Where in the recording an instant falls: past its end the last sample, or round again. */
  private double recordedS(long nanos) {
    double seconds = nanos / NANOS_PER_SECOND / stretch;
    double roundS = recording.lengthS() + (recording.rateHz() > 0 ? 1 / recording.rateHz() : 1);
    return loop ? seconds % roundS : seconds;
  }

  private void interpolate(double seconds, int index, double[] outG) {
    int next = Math.min(index + 1, recording.size() - 1);
    double gapS = recording.timeS(next) - recording.timeS(index);
    double share = gapS > 0 ? Math.min(1, (seconds - recording.timeS(index)) / gapS) : 0;
    for (int axis = 0; axis < 3; axis++) {
      double here = recording.forceG(axis, index);
      outG[axis] = here + share * (recording.forceG(axis, next) - here);
    }
  }

  private void filterTo(int index, double cornerHz) {
    if (index < filteredTo || filteredTo < 0 || index > filteredTo + MEMORY) {
      filteredTo = Math.max(0, index - MEMORY);
      for (int axis = 0; axis < 3; axis++) {
        filtered[axis] = recording.forceG(axis, filteredTo);
      }
    }
    while (filteredTo < index) {
      double gapS = recording.timeS(filteredTo + 1) - recording.timeS(filteredTo);
      double weight = 1 - Math.exp(-2 * Math.PI * cornerHz * gapS);
      filteredTo++;
      for (int axis = 0; axis < 3; axis++) {
        filtered[axis] += weight * (recording.forceG(axis, filteredTo) - filtered[axis]);
      }
    }
  }
}
