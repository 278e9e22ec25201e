package io.pitchwatch.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plot with two logarithmic axes, as SVG that can be read on light and dark pages. */
final class LogPlot {

  private static final int WIDTH = 720;
  private static final int HEIGHT = 460;
  private static final int LEFT = 78;
  private static final int RIGHT = 150;
  private static final int TOP = 34;
  private static final int BOTTOM = 48;
  private static final String[] COLOURS = {"#0b66c3", "#b3541e", "#5b8c1f", "#8a3fa0"};

  private final String title;
  private final double[] x;
  private final double[] y;
  private final String body;
  private final List<String> legend = new ArrayList<>();
  private final StringBuilder lines = new StringBuilder();

  /**
   * An empty plot.
   *
   * @param title above it
   * @param x least and most
   * @param y least and most
   * @param axes what the axes are, with units: first x, then y
   */
  LogPlot(String title, double[] x, double[] y, String... axes) {
    this.title = title;
    this.x = x.clone();
    this.y = y.clone();
    this.body = frame() + labels(axes[0], axes[1]);
  }

  private double px(double value) {
    return LEFT + (WIDTH - LEFT - RIGHT) * Math.log(value / x[0]) / Math.log(x[1] / x[0]);
  }

  private double py(double value) {
    return HEIGHT
        - BOTTOM
        - (HEIGHT - TOP - BOTTOM) * Math.log(value / y[0]) / Math.log(y[1] / y[0]);
  }

  /** A line through points, dashed or whole, in the colour of a number. */
  LogPlot line(String name, int colour, boolean dashed, double[]... points) {
    StringBuilder path = new StringBuilder();
    for (double[] point : points) {
      double inside = Math.max(y[0], Math.min(y[1], point[1]));
      path.append(String.format(Locale.ROOT, "%.1f,%.1f ", px(point[0]), py(inside)));
    }
    String dash = dashed ? " stroke-dasharray='5 4'" : "";
    String stroke = COLOURS[colour % COLOURS.length];
    lines.append(
        String.format(
            "<polyline points='%s' fill='none' stroke='%s' stroke-width='1.8'%s/>%n",
            path.toString().strip(), stroke, dash));
    int at = TOP + 12 + 18 * legend.size();
    legend.add(
        String.format(
            "<line x1='%d' y1='%d' x2='%d' y2='%d' stroke='%s' stroke-width='1.8'%s/>"
                + "<text x='%d' y='%d'>%s</text>%n",
            WIDTH - RIGHT + 8,
            at,
            WIDTH - RIGHT + 30,
            at,
            stroke,
            dash,
            WIDTH - RIGHT + 35,
            at + 4,
            name));
    return this;
  }

  private String frame() {
    StringBuilder grid = new StringBuilder();
    for (double v = x[0]; v <= x[1] * 1.001; v *= 10) {
      grid.append(
          String.format(
              Locale.ROOT,
              "<line x1='%1$.1f' y1='%2$d' x2='%1$.1f' y2='%3$d' class='g'/>"
                  + "<text x='%1$.1f' y='%4$d' text-anchor='middle'>%5$s</text>%n",
              px(v),
              TOP,
              HEIGHT - BOTTOM,
              HEIGHT - BOTTOM + 18,
              plain(v)));
    }
    for (double v = y[0]; v <= y[1] * 1.001; v *= 10) {
      grid.append(
          String.format(
              Locale.ROOT,
              "<line x1='%1$d' y1='%2$.1f' x2='%3$d' y2='%2$.1f' class='g'/>"
                  + "<text x='%4$d' y='%5$.1f' text-anchor='end'>%6$s</text>%n",
              LEFT,
              py(v),
              WIDTH - RIGHT,
              LEFT - 6,
              py(v) + 4,
              plain(v)));
    }
    return grid.toString();
  }

  private static String plain(double v) {
    return v >= 0.99
        ? String.format(Locale.ROOT, "%.0f", v)
        : String.format(Locale.ROOT, "%." + (int) Math.ceil(-Math.log10(v) - 1e-9) + "f", v);
  }

  private static String labels(String xLabel, String yLabel) {
    return String.format(
        "<text x='%d' y='%d' text-anchor='middle'>%s</text>"
            + "<text x='16' y='%d' text-anchor='middle' transform='rotate(-90 16 %d)'>%s</text>%n",
        (LEFT + WIDTH - RIGHT) / 2, HEIGHT - 10, xLabel, HEIGHT / 2, HEIGHT / 2, yLabel);
  }

  /** The whole file. */
  String svg() {
    return String.format(
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d' role='img'"
                + " aria-label='%s'>%n<style>text{font:13px sans-serif;fill:#222}"
                + ".g{stroke:#ccc;stroke-width:1}</style>%n"
                + "<rect width='100%%' height='100%%' fill='#fff'/>%n"
                + "<text x='%d' y='20'>%s</text>%n",
            WIDTH, HEIGHT, title, LEFT, title)
        + body
        + lines
        + String.join("", legend)
        + "</svg>\n";
  }
}
