package io.pitchwatch.floor;

import io.pitchwatch.floor.AccuracyFigures.Outcome;
import io.pitchwatch.floor.ParkedCoach.Scene;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws docs/figures/accuracy-still.svg and accuracy-walking.svg, error against averaging time and
 * the white-noise bound.
 */
final class AccuracyPlots {

  private static final int[] SECONDS = {5, 10, 20, 30, 60};
  private static final double RATE_HZ = 100;

  private AccuracyPlots() {}

  /**
   * Draws.
   *
   * @param args the directory for the plots, and seeds
   */
  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    int seeds = Integer.parseInt(args[1]);
    draw(directory, seeds, Scene.STILL);
    draw(directory, seeds, Scene.WALKING);
  }

  private static void draw(Path directory, int seeds, Scene scene) throws IOException {
    String name = scene == Scene.STILL ? "still" : "walking";
    LogPlot plot =
        new LogPlot(
            "Error of the steady lean, " + name + " (whole: measured, dashed: white-noise bound)",
            new double[] {1, 100},
            new double[] {1e-4, 1e-1},
            "averaging time, s",
            "root mean square error, deg");
    Chip[] chips = {Chip.ADXL345, Chip.MPU6050, Chip.ADXL355};
    for (int c = 0; c < chips.length; c++) {
      Outcome[] outcomes = AccuracyFigures.measure(chips[c], RATE_HZ, scene, seeds, SECONDS);
      List<double[]> measured = new ArrayList<>();
      for (int i = 0; i < SECONDS.length; i++) {
        measured.add(new double[] {SECONDS[i], Math.toDegrees(outcomes[i].rmsRad())});
      }
      SensorNoise noise = chips[c].noise(RATE_HZ);
      plot.line(chips[c].name(), c, false, measured.toArray(double[][]::new));
      plot.line("its bound", c, true, bound(noise, 1), bound(noise, 100));
    }
    Files.writeString(directory.resolve("accuracy-" + name + ".svg"), plot.svg());
  }

  private static double[] bound(SensorNoise noise, double seconds) {
    return new double[] {seconds, Math.toDegrees(noise.boundRad(seconds))};
  }
}
