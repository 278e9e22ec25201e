package io.pitchwatch.sim.scenario;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A recording of specific force in a sensor's own axes: CSV with the header {@code
 * t_s,ax_g,ay_g,az_g[,temp_c]}, seconds, g and degrees Celsius; lines that begin with # are passed
 * over. Instants may be uneven, but never go back.
 */
public final class Recording {

  private static final List<String> COLUMNS = List.of("t_s", "ax_g", "ay_g", "az_g");
  private static final String TEMPERATURE = "temp_c";
  private static final int MOST_ROWS = 20_000_000;

  private final double[] timeS;
  private final double[][] forceG;
  private final double[] temperatureC;

  private Recording(double[] timeS, double[][] forceG, double[] temperatureC) {
    this.timeS = timeS;
    this.forceG = forceG;
    this.temperatureC = temperatureC;
  }

  /**
   * Reads a recording; what is wrong is added to the complaints, and then nothing is returned.
   *
   * @param file the CSV file
   * @param complaints receives what is wrong, the first twenty lines of it
   */
  static List<Recording> read(Path file, List<Complaint> complaints) {
    List<Complaint> found = new ArrayList<>();
    List<double[]> rows = new ArrayList<>();
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      readRows(file.toString(), reader, rows, found);
    } catch (IOException e) {
      found.add(
          new Complaint(file.toString(), 0, "", "cannot be read: " + e.getMessage(), "a CSV file"));
    }
    if (found.isEmpty() && rows.size() < 2) {
      found.add(
          new Complaint(file.toString(), 0, "", rows.size() + " samples", "two samples or more"));
    }
    complaints.addAll(found.subList(0, Math.min(20, found.size())));
    return found.isEmpty() ? List.of(of(rows)) : List.of();
  }

  private static void readRows(
      String file, BufferedReader reader, List<double[]> rows, List<Complaint> complaints)
      throws IOException {
    int[] places = new int[0];
    int number = 0;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      number++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = Arrays.stream(line.split(",", -1)).map(String::strip).toList();
      if (places.length == 0) {
        places = places(cells);
        if (!cells.containsAll(COLUMNS)) {
          complaints.add(
              new Complaint(file, number, "", line, "the header t_s,ax_g,ay_g,az_g[,temp_c]"));
          return;
        }
        continue;
      }
      double[] row = row(cells, places);
      double lastS = rows.isEmpty() ? Double.NEGATIVE_INFINITY : rows.get(rows.size() - 1)[0];
      if (!Double.isFinite(row[0] + row[1] + row[2] + row[3] + row[4])) {
        complaints.add(new Complaint(file, number, "", line, "a finite number in each column"));
      } else if (row[0] < lastS) {
        complaints.add(new Complaint(file, number, "t_s", line, "no time before " + lastS));
      } else if (rows.size() < MOST_ROWS) {
        rows.add(row);
      }
    }
  }

  private static int[] places(List<String> header) {
    int[] places = new int[COLUMNS.size() + 1];
    for (int i = 0; i < COLUMNS.size(); i++) {
      places[i] = header.indexOf(COLUMNS.get(i));
    }
    places[COLUMNS.size()] = header.indexOf(TEMPERATURE);
    return places;
  }

  private static double[] row(List<String> cells, int[] places) {
    double[] row = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      row[i] = places[i] < 0 ? 25 : number(cells, places[i]);
    }
    return row;
  }

  private static double number(List<String> cells, int place) {
    try {
      return place < cells.size() ? Double.parseDouble(cells.get(place)) : Double.NaN;
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private static Recording of(List<double[]> rows) {
    int count = rows.size();
    double[] timeS = new double[count];
    double[][] forceG = new double[3][count];
    double[] temperatureC = new double[count];
    for (int i = 0; i < count; i++) {
      double[] row = rows.get(i);
      timeS[i] = row[0] - rows.get(0)[0];
      for (int axis = 0; axis < 3; axis++) {
        forceG[axis][i] = row[1 + axis];
      }
      temperatureC[i] = row[4];
    }
    return new Recording(timeS, forceG, temperatureC);
  }

  /** How many samples there are. */
  public int size() {
    return timeS.length;
  }

  /** From the first sample to the last, seconds. */
  public double lengthS() {
    return timeS[timeS.length - 1];
  }

  /** Mean rate, Hz; 0 if all samples bear the same time. */
  public double rateHz() {
    return lengthS() > 0 ? (timeS.length - 1) / lengthS() : 0;
  }

  /** When a sample was taken, seconds after the first. */
  double timeS(int index) {
    return timeS[index];
  }

  /** Force along an axis, g. */
  double forceG(int axis, int index) {
    return forceG[axis][index];
  }

  /** Temperature, degrees Celsius; 25 if the recording has none. */
  double temperatureC(int index) {
    return temperatureC[index];
  }

  /** The last sample at or before a time in seconds; the first if there is none. */
  int at(double seconds) {
    int found = Arrays.binarySearch(timeS, seconds);
    if (found < 0) {
      return Math.max(0, -found - 2);
    }
    while (found + 1 < timeS.length && timeS[found + 1] == seconds) {
      found++;
    }
    return found;
  }
}
