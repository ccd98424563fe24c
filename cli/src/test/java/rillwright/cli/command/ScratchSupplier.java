package rillwright.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A folder to write a project in, and in it a supplier's list, empty at first. */
abstract class ScratchSupplier {
  static final String SHEET =
      """
      flow [L/s],head [m],power [W]
      0,5,150
      1.6,4.3,200
      3.9,0,234
      """;

  @TempDir Path folder;

  Path list;

  @BeforeEach
  void makeList() throws IOException {
    list = Files.createDirectory(folder.resolve("list"));
  }

  void sheet(String name, String text) throws IOException {
    Files.writeString(list.resolve(name), text);
  }

  String file(String text) throws IOException {
    return Files.writeString(folder.resolve("pond.yaml"), text).toString();
  }
}
