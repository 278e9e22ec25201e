package io.pitchwatch.floor;

import io.pitchwatch.bus.Pi4jBus;
import io.pitchwatch.sensing.AccelerometerDriver;
import io.pitchwatch.sensing.ChipFacts;
import io.pitchwatch.sensing.Mpu6050Driver;
import io.pitchwatch.sensing.Sampler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongConsumer;

/**
 * Draws docs/figures/allan-*.svg, one for each chip: a real recording beside the data sheet where
 * there is one, else the simulated chip; and prints what is stated of the real one's lean beside
 * what happened.
 */
final class AllanPlots {

  private static final long SECOND = 1_000_000_000L;
  private static final double SIMULATED_S = 1800;
  private static final double LEAST_S = 0.01;
  private static final String AXES = "xyz";

  /** Samples at an even pace: times, s, and three axes, g. */
  private static final class Still {
    final double[] timeS;
    final double[][] axes = new double[3][];

    Still(List<double[]> rows) {
      timeS = rows.stream().mapToDouble(row -> row[0]).toArray();
      for (int axis = 0; axis < 3; axis++) {
        int column = axis + 1;
        axes[axis] = rows.stream().mapToDouble(row -> row[column]).toArray();
      }
    }

    double periodS() {
      return (timeS[timeS.length - 1] - timeS[0]) / (timeS.length - 1);
    }
  }

  private AllanPlots() {}

  /**
   * Draws.
   *
   * @param args the directory for the plots, and the still recording of an MPU-6050
   */
  public static void main(String[] args) throws IOException {
    Path directory = Path.of(args[0]);
    Still real = read(Path.of(args[1]));
    for (io.pitchwatch.sensing.Chip chip : io.pitchwatch.sensing.Chip.values()) {
      boolean known = chip == io.pitchwatch.sensing.Chip.MPU6050;
      Still still = known ? real : simulated(chip);
      ChipFacts facts = chip.facts();
      Files.writeString(
          directory.resolve("allan-" + chip.id() + ".svg"), plot(facts, still, known));
    }
    compare(real);
  }

  private static Still read(Path file) throws IOException {
    List<double[]> rows = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      if (!line.startsWith("t_s")) {
        String[] cells = line.split(",", -1);
        double[] row = new double[4];
        for (int i = 0; i < row.length; i++) {
          row[i] = Double.parseDouble(cells[i]);
        }
        rows.add(row);
      }
    }
    return new Still(rows);
  }

  /** What our own driver reads from the registers of a simulated chip that lies still. */
  private static Still simulated(io.pitchwatch.sensing.Chip chip) throws IOException {
    int address = chip.addresses().get(0);
    Path scenario = Files.createTempFile("still", ".toml");
    Files.writeString(
        scenario,
        String.format(
            Locale.ROOT,
            "seed = 6%n[[sensor]]%nid = \"one\"%nchip = \"%s\"%naddress = \"0x%02X\"%n",
            chip.id(),
            address));
    List<double[]> rows = new ArrayList<>();
    try (Pi4jBus buses =
        Pi4jBus.open(
            "pitchwatch-sim-i2c", Map.of("pitchwatch.sim.scenario", scenario.toString()))) {
      LongConsumer clock = buses.face(LongConsumer.class).orElseThrow();
      AccelerometerDriver driver = chip.driver(buses.at(1, address));
      Sampler sampler =
          new Sampler(driver, (nanos, x, y, z) -> rows.add(new double[] {nanos / 1e9, x, y, z}));
      long nowNanos = 0;
      while (nowNanos < SIMULATED_S * SECOND) {
        clock.accept(nowNanos);
        nowNanos = Math.max(sampler.poll(nowNanos), nowNanos + 1);
      }
    }
    Files.delete(scenario);
    return new Still(rows);
  }

  /** The Allan deviation of white noise of density N is N/√(2τ). */
  private static String plot(ChipFacts facts, Still still, boolean real) {
    boolean quiet = facts.xyNoiseG() < 1e-4;
    LogPlot plot =
        new LogPlot(
            "Allan deviation of "
                + (real ? "a real " + facts.chip() + ", still for 11 minutes" : "")
                + (real ? "" : "the simulated " + facts.chip() + ", through its registers"),
            new double[] {LEAST_S, 1000},
            quiet ? new double[] {0.001, 1} : new double[] {0.01, 10},
            "averaging time, s",
            "Allan deviation, mg");
    for (int axis = 0; axis < 3; axis++) {
      plot.line(
          AXES.charAt(axis) + (real ? ", measured" : ", simulated"), axis, false, of(still, axis));
    }
    boolean alike = facts.zNoiseG() == facts.xyNoiseG();
    plot.line(alike ? "data sheet" : "data sheet, x, y", 3, true, white(facts.xyNoiseG()));
    if (!alike) {
      plot.line("data sheet, z", 2, true, white(facts.zNoiseG()));
    }
    return plot.svg();
  }

  private static double[][] of(Still still, int axis) {
    List<double[]> points = new ArrayList<>();
    AllanDeviation deviation = AllanDeviation.ofSamples(still.axes[axis]);
    double periodS = still.periodS();
    int length = still.timeS.length;
    for (int m = 1; m < length / 4; m = Math.max(m + 1, m * 5 / 4)) {
      double mg = 1e3 * deviation.overlapping(m);
      if (m * periodS >= LEAST_S) {
        points.add(new double[] {m * periodS, mg});
      }
      if (m == 1 || Math.abs(m * periodS - 10) < 1.2) {
        System.out.printf(Locale.ROOT, "%s, %.2f s: %.4f mg%n", AXES.charAt(axis), m * periodS, mg);
      }
    }
    return points.toArray(double[][]::new);
  }

  private static double[][] white(double densityG) {
    double densityMg = 1e3 * densityG;
    return new double[][] {
      {LEAST_S, densityMg / Math.sqrt(2 * LEAST_S)},
      {100, densityMg / Math.sqrt(200)}
    };
  }

  /**
   * The recording in pieces, a fresh filter for each: how far the steady leans of neighbouring
   * pieces differ, beside what is stated of such a difference. Its truth is not known; that it lay
   * still is.
   */
  private static void compare(Still still) {
    System.out.println("| pieces of | differences | rms deg | stated deg | inside 2 s.e. |");
    System.out.println("|---|---|---|---|---|");
    for (int seconds : new int[] {5, 10, 30, 60}) {
      compare(still, seconds);
    }
  }

  private static void compare(Still still, int seconds) {
    List<FloorReading> pieces = pieces(still, seconds);
    double squares = 0;
    double stated = 0;
    int inside = 0;
    int count = 0;
    for (int i = 1; i < pieces.size(); i++) {
      FloorReading now = pieces.get(i);
      FloorReading before = pieces.get(i - 1);
      double error = Math.hypot(before.uncertaintyRad(), now.uncertaintyRad());
      double[] differences = {
        now.steady().rollRad() - before.steady().rollRad(),
        now.steady().pitchRad() - before.steady().pitchRad()
      };
      for (double d : differences) {
        squares += d * d;
        stated += error * error;
        inside += Math.abs(d) < 2 * error ? 1 : 0;
        count++;
      }
    }
    System.out.printf(
        Locale.ROOT,
        "| %d s | %d | %.4f | %.4f | %.1f %% |%n",
        seconds,
        count,
        Math.toDegrees(Math.sqrt(squares / count)),
        Math.toDegrees(Math.sqrt(stated / count)),
        100.0 * inside / count);
  }

  private static FloorFilter fresh() {
    FloorFilter filter = new FloorFilter(Chip.MPU6050.noise(100));
    filter.systematic(Mpu6050Driver.FACTS.wanderG());
    return filter;
  }

  private static List<FloorReading> pieces(Still still, int seconds) {
    List<FloorReading> pieces = new ArrayList<>();
    FloorFilter filter = fresh();
    double endS = still.timeS[0] + seconds;
    long nanos = 0;
    for (int i = 0; i < still.timeS.length; i++) {
      if (still.timeS[i] >= endS) {
        pieces.add(filter.reading(nanos));
        filter = fresh();
        endS += seconds;
      }
      nanos = Math.round(still.timeS[i] * SECOND);
      // It lay with z down.
      filter.accept(nanos, still.axes[0][i], -still.axes[1][i], -still.axes[2][i]);
    }
    return pieces;
  }
}
