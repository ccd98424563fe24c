package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rillwright.cli.examples.ExampleSheets;

/** The example of two falls off one pump, changed. */
final class TwinFalls {
  static final Path FOLDER = Path.of("..", "examples", "twin-falls");

  /** An invented data sheet that meets the targets there, without a price. */
  static final String SHEET =
      """
      flow [gph],head [ft],power [W]
      0,22,150
      1900,20,190
      3800,11,235
      4900,0,240
      """;

  private TwinFalls() {}

  /**
   * A file of the example with a piece of its text changed, its data sheets beside it.
   *
   * @param name of the file
   * @param folder to write it into
   */
  static String changed(String name, Path folder, String what, String by) throws IOException {
    String text = Files.readString(FOLDER.resolve(name));
    assertTrue(text.contains(what), what);
    ExampleSheets.layInto(folder, FOLDER);
    return Files.writeString(folder.resolve("falls.yaml"), text.replace(what, by)).toString();
  }
}
