package io.pitchwatch.sensing;

import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Writes raw samples to a CSV file that the simulated coach can play again: columns {@code
 * t_s,ax_g,ay_g,az_g} and, if the chip has a thermometer, {@code temp_c}; seconds since the first
 * sample, chip's axes, g, °C.
 *
 * <p>The file appears under its name only when it is complete and on the disk; until then it grows
 * beside it as {@code .part}. Samples at the end of the range and samples that were lost have no
 * row. What goes wrong is kept and told by {@link #finish}.
 */
public final class Recorder implements SampleSink {

  /** What came of a recording. */
  public sealed interface Outcome {

    /**
     * The file is complete.
     *
     * @param rows samples in it
     * @param seconds from the first to the last
     */
    record Written(Path file, long rows, double seconds) implements Outcome {}

    /**
     * There is no file.
     *
     * @param text why, for people
     */
    record Failed(String text) implements Outcome {}
  }

  private final Path file;
  private final Path part;
  private final long mostNanos;
  private final long mostBytes;
  private final DoubleSupplier temperatureC;
  private final StringBuilder row = new StringBuilder(64);

  private @Nullable OutputStream out;
  private boolean withTemperature;
  private long firstNanos;
  private long lastNanos;
  private long rows;
  private long bytes;
  private String failure = "";

  /**
   * A recorder; opens its file with the first sample.
   *
   * @param file where to; replaced if it exists
   * @param mostNanos longest recording
   * @param mostBytes largest file
   * @param temperatureC the chip's thermometer, °C, or NaN
   */
  public Recorder(Path file, long mostNanos, long mostBytes, DoubleSupplier temperatureC) {
    this.file = file;
    this.part = file.resolveSibling(file.getFileName() + ".part");
    this.mostNanos = mostNanos;
    this.mostBytes = mostBytes;
    this.temperatureC = temperatureC;
  }

  /** Whether no more is written: the bounds are reached, or writing failed. */
  public boolean done() {
    return !failure.isEmpty()
        || bytes >= mostBytes
        || (rows > 0 && lastNanos - firstNanos >= mostNanos);
  }

  @Override
  public void sample(long nanos, double xG, double yG, double zG) {
    if (done()) {
      return;
    }
    try {
      OutputStream open = out == null ? open(nanos) : out;
      row.setLength(0);
      fixed(row, (nanos - firstNanos) / 1e9, 4);
      fixed(row.append(','), xG, 6);
      fixed(row.append(','), yG, 6);
      fixed(row.append(','), zG, 6);
      if (withTemperature) {
        fixed(row.append(','), temperatureC.getAsDouble(), 2);
      }
      write(open, row.append('\n'));
      rows++;
      lastNanos = nanos;
    } catch (IOException e) {
      fail(e);
    }
  }

  private OutputStream open(long nanos) throws IOException {
    firstNanos = nanos;
    withTemperature = !Double.isNaN(temperatureC.getAsDouble());
    OutputStream opened = new BufferedOutputStream(new FileOutputStream(part.toFile()));
    out = opened;
    row.setLength(0);
    row.append("t_s,ax_g,ay_g,az_g").append(withTemperature ? ",temp_c\n" : "\n");
    write(opened, row);
    return opened;
  }

  private void write(OutputStream open, StringBuilder text) throws IOException {
    byte[] encoded = text.toString().getBytes(StandardCharsets.US_ASCII);
    open.write(encoded);
    bytes += encoded.length;
  }

  /** A number with a fixed count of decimals; NaN as nothing. */
  static void fixed(StringBuilder to, double value, int decimals) {
    if (Double.isNaN(value)) {
      return;
    }
    long scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    long scaled = Math.round(Math.abs(value) * scale);
    if (value < 0 && scaled != 0) {
      to.append('-');
    }
    to.append(scaled / scale).append('.');
    String rest = Long.toString(scaled % scale);
    to.append("0".repeat(decimals - rest.length())).append(rest);
  }

  /** Ends the recording and puts the file under its name. */
  public Outcome finish() {
    OutputStream open = out;
    if (open == null) {
      return new Outcome.Failed(failure.isEmpty() ? "no sample came" : failure);
    }
    try {
      open.close();
      if (failure.isEmpty()) {
        force(part);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        force(directory());
        return new Outcome.Written(file, rows, (lastNanos - firstNanos) / 1e9);
      }
      Files.deleteIfExists(part);
    } catch (IOException e) {
      fail(e);
    }
    return new Outcome.Failed(failure);
  }

  private Path directory() {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  private static void force(Path path) throws IOException {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  private void fail(IOException e) {
    if (failure.isEmpty()) {
      failure = "cannot write " + file + ": " + e.getMessage();
    }
  }
}
