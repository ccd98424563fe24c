package rillwright.cli.page.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.cli.interview.Draft;
import rillwright.cli.output.NewFile;
import rillwright.cli.page.desk.SheetBeside;

/** Invented jobs that come with the program: a copy of one is a start. */
final class Examples {
  private static final String ENDING = ".csv";

  private static final List<String> FILES =
      List.of(
          "small-pond/pond.yaml",
          "twin-falls/falls.yaml",
          "long-stream/stream.yaml",
          "weak-fall/fall.yaml",
          "header-pond/troughs.yaml");

  private Examples() {}

  /** Their files by their titles. */
  static Map<String, String> fileByTitle() {
    Map<String, String> files = new LinkedHashMap<>();
    for (String file : FILES) {
      String title = scalar(tree(file).find("title")).orElse(file);
      files.put(title, file);
    }
    return files;
  }

  /**
   * Writes a copy of one, its data sheets beside it.
   *
   * @param title of the example
   * @return whether there is one of this title
   * @throws rillwright.cli.file.fault.InvalidInput if another file lies in its place
   */
  static boolean copy(String title, Path target) {
    Optional<String> file = Optional.ofNullable(fileByTitle().get(title));
    file.ifPresent(it -> copyOf(it, target));
    return file.isPresent();
  }

  private static void copyOf(String file, Path target) {
    new NewFile(target).check();
    tree(file).findMap("pumps").map(MapNode::entries).stream()
        .flatMap(List::stream)
        .flatMap(pump -> scalar(Optional.of(pump)).stream())
        .filter(path -> path.endsWith(ENDING))
        .forEach(
            path -> {
              String name = path.substring(path.lastIndexOf('/') + 1);
              String model = name.substring(0, name.length() - ENDING.length());
              SheetBeside.put(target, model, text(Path.of(file).resolveSibling(path).toString()));
            });
    new NewFile(target).write(new Draft(text(file), target));
  }

  private static Optional<String> scalar(Optional<Entry> entry) {
    return entry.map(Entry::value).stream()
        .flatMap(it -> it instanceof Scalar scalar ? Stream.of(scalar.text()) : Stream.empty())
        .findFirst();
  }

  private static MapNode tree(String file) {
    return TreeReader.read(new SourceText(file, text(file)));
  }

  private static String text(String file) {
    try (InputStream resource = Examples.class.getResourceAsStream(file.replace('\\', '/'))) {
      return new String(resource.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
