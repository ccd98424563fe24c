package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the source files of all modules look like from outside; Maven runs it in its module. */
class SourceTreeTest {
  private static final int MOST_LINES = 300;
  private static final int MOST_FILES = 20;

  /** Larger still: one class for each answer. */
  private static final Path JSON = Path.of("../cli/src/main/java/rillwright/cli/report/json");

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

  @Test
  void noPackageOfTheProgramHasMoreThanTwentyFiles() throws IOException {
    Set<Path> large = largeUnder(Path.of("../cli/src/main/java"));
    large.remove(JSON);
    assertEquals(Set.of(), large);
  }

  @Test
  void aLargePackageIsSeen(@TempDir Path folder) throws IOException {
    Path large = Files.createDirectories(folder.resolve("large"));
    for (int i = 0; i < MOST_FILES; i++) {
      Files.createFile(large.resolve("A" + i + ".java"));
    }
    assertEquals(Set.of(), largeUnder(folder));
    Files.createFile(large.resolve("OneMore.java"));
    assertEquals(Set.of(large), largeUnder(folder));
  }

  private static Set<Path> largeUnder(Path root) throws IOException {
    return javaFilesUnder(root).stream()
        .collect(Collectors.groupingBy(Path::getParent, Collectors.counting()))
        .entrySet()
        .stream()
        .filter(files -> files.getValue() > MOST_FILES)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  private static List<Path> javaFilesUnder(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }
}
