package rillwright.cli.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;

/** Data sheets of an example, for a changed copy of it that lies elsewhere. */
public final class ExampleSheets {
  private static final String PUMPS = "pumps";

  private ExampleSheets() {}

  /** Lays the folder {@code pumps} of an example into another folder. */
  public static void layInto(Path folder, Path example) throws IOException {
    Path pumps = Files.createDirectories(folder.resolve(PUMPS));
    try (Stream<Path> sheets = Files.list(example.resolve(PUMPS))) {
      for (Path sheet : sheets.toList()) {
        Files.copy(sheet, pumps.resolve(sheet.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }
}
