package rillwright.cli.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import rillwright.cli.page.web.WebServer;

/**
 * A page that is served for a test.
 *
 * @param server of it
 * @param file that it shows
 * @param defects of the program that it met
 */
public record OpenPage(WebServer server, Path file, List<RuntimeException> defects)
    implements AutoCloseable {

  /** The page of a file. */
  public static OpenPage of(Path file) throws IOException {
    List<RuntimeException> defects = new CopyOnWriteArrayList<>();
    Pages answers = Pages.of(Optional.of(file), file.toAbsolutePath().getParent(), defects::add);
    return new OpenPage(WebServer.open(answers, defects::add), file, defects);
  }

  /** The page of an example that is copied into a folder, its data sheets with it. */
  public static OpenPage ofExample(String file, Path folder) throws IOException {
    Path example = Path.of("../examples").resolve(file);
    try (Stream<Path> all = Files.walk(example.getParent())) {
      all.filter(it -> it.equals(example) || it.toString().endsWith(".csv"))
          .forEach(it -> copy(it, folder.resolve(example.getParent().relativize(it))));
    }
    return of(folder.resolve(example.getFileName()));
  }

  private static void copy(Path from, Path to) {
    try {
      Files.createDirectories(to.getParent());
      Files.copy(from, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Its address. */
  public URI address() {
    return URI.create(server.address());
  }

  @Override
  public void close() {
    server.close();
  }
}
