package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the source files of all modules look like from outside; Maven runs it in its module. */
class SourceTreeTest {
  private static final int MOST_LINES = 300;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../solver/src/main/java", "../solver/src/test/java",
        "../curves/src/main/java", "../curves/src/test/java",
        "../cli/src/main/java", "../cli/src/test/java"
      })
  void noFileIsLongerThanThreeHundredLines(String root) throws IOException {
    List<Path> files = javaFilesUnder(Path.of(root));
    assertFalse(files.isEmpty(), root);
    for (Path file : files) {
      long lines = Files.readAllLines(file).size();
      assertEquals(
          0, Math.max(0, lines - MOST_LINES), () -> file + " has " + lines + " lines; split it");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../solver/src/main/java", "../curves/src/main/java", "../cli/src/main/java"})
  void everyPackageSaysWhatItIs(String root) throws IOException {
    List<Path> packages =
        javaFilesUnder(Path.of(root)).stream().map(Path::getParent).distinct().toList();
    assertFalse(packages.isEmpty(), root);
    assertEquals(
        List.of(),
        packages.stream().filter(p -> !Files.exists(p.resolve("package-info.java"))).toList());
  }

  private static List<Path> javaFilesUnder(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }
}
