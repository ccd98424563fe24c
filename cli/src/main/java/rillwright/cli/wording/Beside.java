package rillwright.cli.wording;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What lies where something was looked for. */
public final class Beside {
  private Beside() {}

  /** Names in a folder, in alphabetical order, without hidden ones; none if it cannot be read. */
  public static List<String> names(Path folder, Predicate<Path> kind) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(kind)
          .map(entry -> entry.getFileName().toString())
          .filter(entry -> !entry.startsWith("."))
          .sorted()
          .toList();
    } catch (IOException | SecurityException unreadable) {
      return List.of();
    }
  }

  /** The folder in which a file or folder lies or would lie. */
  public static Path folderOf(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    return whole.getNameCount() > 1 ? whole.getParent() : whole;
  }

  /** {@code ; did you mean "falls.yaml"?} of a file that is not there; empty if none is alike. */
  public static String meant(Path missing) {
    Path name = missing.getFileName();
    List<String> names = name == null ? List.of() : names(folderOf(missing), Files::isRegularFile);
    return names.isEmpty() || Choices.meant(name.toString(), names).isEmpty()
        ? ""
        : Choices.hint(name.toString(), names);
  }
}
