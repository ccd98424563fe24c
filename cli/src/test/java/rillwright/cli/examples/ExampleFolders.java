package rillwright.cli.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The examples of this project. */
public final class ExampleFolders {
  /** Their folder; Maven runs the tests in the folder of the module. */
  static final Path ROOT = Path.of("..", "examples");

  /** An example of the solver without files, which the solver's own tests compile and run. */
  private static final Path LIBRARY = ROOT.resolve("library");

  private ExampleFolders() {}

  /** A folder for each example with a file, in alphabetical order. */
  static List<Path> list() {
    try (Stream<Path> folders = Files.list(ROOT)) {
      return folders.filter(Files::isDirectory).filter(f -> !f.equals(LIBRARY)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Their project files. */
  public static List<Path> projects() {
    try (Stream<Path> files =
        Files.find(ROOT, 2, (file, of) -> file.toString().endsWith(".yaml"))) {
      return files.filter(ExampleFolders::isProject).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Readings alone have no lines. */
  private static boolean isProject(Path file) {
    try {
      return Files.readAllLines(file).contains("lines:");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
