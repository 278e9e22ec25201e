package io.pitchwatch.mqtt;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The published schemas, each read as draft 07 and as 2020-12. */
public final class Schemas {

  private static final Path DIRECTORY = Path.of("../docs/schemas");

  private Schemas() {}

  /** What is wrong with the document in either reading; empty if nothing is. */
  public static List<String> faults(String schema, String document) throws IOException {
    List<String> faults = new ArrayList<>();
    String text = Files.readString(DIRECTORY.resolve(schema + ".json"));
    for (SpecificationVersion version :
        List.of(SpecificationVersion.DRAFT_7, SpecificationVersion.DRAFT_2020_12)) {
      SchemaRegistry.withDefaultDialect(version)
          .getSchema(text)
          .validate(
              document,
              InputFormat.JSON,
              context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
          .forEach(error -> faults.add(version + ": " + error));
    }
    return faults;
  }

  /** What is wrong with a schema, by the schema of schemas. */
  static List<String> faultsAgainst(String metaschema, String schema) {
    List<String> faults = new ArrayList<>();
    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(SchemaLocation.of(metaschema))
        .validate(schema, InputFormat.JSON)
        .forEach(error -> faults.add(error.toString()));
    return faults;
  }
}
