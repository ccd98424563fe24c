package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.schema.PublishedSchema;

/** The JSON that the examples print is what the published schema says. */
class ExampleResultsTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.RESULT.text(), InputFormat.JSON);

  static List<Path> results() throws IOException {
    List<Path> results = new ArrayList<>();
    for (Path folder : ExampleFolders.list()) {
      try (Stream<Path> files = Files.list(folder)) {
        files.filter(file -> file.toString().endsWith(".json")).sorted().forEach(results::add);
      }
    }
    return results;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("results")
  void areAsThePublishedSchemaSays(Path result) throws IOException {
    assertEquals(List.of(), SCHEMA.validate(Files.readString(result), InputFormat.JSON));
  }
}
