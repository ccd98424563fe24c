package rillwright.cli.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.schema.ResultSchema;

/** The JSON that the examples print is what the published schema says. */
class ExampleResultsTest {
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
    ResultSchema.assertTakes(Files.readString(result));
  }
}
