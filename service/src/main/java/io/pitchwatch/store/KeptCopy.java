package io.pitchwatch.store;

import io.pitchwatch.store.KeptFile.Row;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * What can still be read of a file of kept texts that is damaged or cannot be written: read from a
 * copy, as far as it goes, each text only if its checksum fits.
 */
final class KeptCopy implements Database.Rescue {

  private static final long MOST_BYTES = 16 << 20;

  private final List<Row> rows = new ArrayList<>();

  List<Row> rows() {
    return rows;
  }

  @Override
  public void from(Path file) {
    rows.clear();
    try {
      if (Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
        Path directory = Files.createTempDirectory("pitchwatch");
        try {
          readCopy(file, directory.resolve("copy"));
        } finally {
          delete(directory);
        }
      }
    } catch (IOException e) {
      // No room for a copy, or no right to read it: then nothing is saved, as the trouble says.
      return;
    }
  }

  private void readCopy(Path file, Path copy) throws IOException {
    for (String part : List.of("", "-wal")) {
      Path from = Path.of(file + part);
      if (Files.exists(from)) {
        Files.copy(from, Path.of(copy + part));
      }
    }
    try (Connection open = Sql.open(copy.toString())) {
      KeptFile.eachRow(
          open,
          (row, sound) -> {
            if (sound) {
              rows.add(row);
            }
          });
    } catch (SQLException e) {
      // This is how reading a damaged file ends; the rows before are good by their checksums.
      return;
    }
  }

  private static void delete(Path directory) throws IOException {
    try (var files = Files.list(directory)) {
      for (Path each : files.toList()) {
        Files.delete(each);
      }
    }
    Files.delete(directory);
  }
}
