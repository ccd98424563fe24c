package rillwright.cli.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A JSON Schema (draft 2020-12) that comes with the program. */
public enum PublishedSchema {
  /** Of project files, YAML or JSON: editors complete and check them with it. */
  PROJECT("project.schema.json"),

  /** Of what commands print with {@code --format json}: a definition named like each command. */
  RESULT("result.schema.json");

  private static final String FOLDER = "/rillwright/schema/";

  private final String fileName;

  PublishedSchema(String fileName) {
    this.fileName = fileName;
  }

  /** The name under which it is published. */
  public String fileName() {
    return fileName;
  }

  /** The whole schema. */
  public String text() {
    try (InputStream stream = PublishedSchema.class.getResourceAsStream(FOLDER + fileName)) {
      if (stream == null) {
        throw new IllegalStateException(fileName + " is missing from the program");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(fileName, e);
    }
  }
}
