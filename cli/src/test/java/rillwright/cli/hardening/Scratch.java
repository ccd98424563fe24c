package rillwright.cli.hardening;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

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

  /** A folder with a data sheet of a pump's points, as a project file writes them. */
  static String sheets(Path folder, List<Map<String, Object>> points) {
    StringBuilder sheet = new StringBuilder("flow [m3/h],head [m],power [W]\n");
    for (Map<String, Object> point : points) {
      String power = number(point.getOrDefault("power", "100 W"));
      String row = number(point.get("flow")) + "," + number(point.get("head")) + "," + power;
      sheet.append(row + "\n");
    }
    Path sheets = folder.resolve("sheets");
    sheets.toFile().mkdirs();
    file(sheets, "own.csv", sheet.toString());
    return sheets.toString();
  }

  private static String number(Object quantity) {
    return ((String) quantity).replaceFirst(" .*", "");
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
