package rillwright.cli.hardening;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Project files of one test. */
final class Scratch {
  private Scratch() {}

  /** Writes a project; gives its path as an argument. */
  static String file(Path folder, String project) {
    return file(folder, "pond.yaml", project);
  }

  /** Writes a file of a name; gives its path as an argument. */
  static String file(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text of a file. */
  static String read(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
