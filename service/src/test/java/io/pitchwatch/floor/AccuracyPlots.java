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
 * the white-noise bound, and allan.svg, a real recording beside its data sheet.
 */
final class AccuracyPlots {

  private static final int[] SECONDS = {5, 10, 20, 30, 60};
  private static final double RATE_HZ = 100;

  private AccuracyPlots() {}

  /**
   * Draws.
   *
   * @param args the directory for the plots; seeds; and the still recording
   */
  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    int seeds = Integer.parseInt(args[1]);
    draw(directory, seeds, Scene.STILL);
    draw(directory, seeds, Scene.WALKING);
    Files.writeString(directory.resolve("allan.svg"), allan(Path.of(args[2])));
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

  /** The Allan deviation of white noise of density N is N/√(2τ). */
  private static String allan(Path still) throws IOException {
    List<String> lines = Files.readAllLines(still);
    double[][] axes = new double[3][lines.size() - 1];
    double endS = 0;
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      endS = Double.parseDouble(cells[0]);
      for (int axis = 0; axis < 3; axis++) {
        axes[axis][i - 1] = 1e3 * Double.parseDouble(cells[axis + 1]);
      }
    }
    double periodS = endS / (lines.size() - 2);
    LogPlot plot =
        new LogPlot(
            "Allan deviation of an MPU-6050 lying still for 11 minutes",
            new double[] {0.01, 1000},
            new double[] {0.01, 10},
            "averaging time, s",
            "Allan deviation, mg");
    for (int axis = 0; axis < 3; axis++) {
      List<double[]> points = new ArrayList<>();
      AllanDeviation deviation = AllanDeviation.ofSamples(axes[axis]);
      for (int m = 1; m < axes[axis].length / 4; m = Math.max(m + 1, m * 5 / 4)) {
        double mg = deviation.overlapping(m);
        points.add(new double[] {m * periodS, mg});
        if (axis == 0 && (m == 1 || Math.abs(m * periodS - 10) < 1.3)) {
          System.out.printf("x, %.2f s: %.3f mg%n", m * periodS, mg);
        }
      }
      plot.line("xyz".charAt(axis) + ", measured", axis, false, points.toArray(double[][]::new));
    }
    double densityMg = 1e3 * Chip.MPU6050.densityG;
    return plot.line(
            "data sheet",
            3,
            true,
            new double[] {periodS, densityMg / Math.sqrt(2 * periodS)},
            new double[] {100, densityMg / Math.sqrt(200)})
        .svg();
  }
}
