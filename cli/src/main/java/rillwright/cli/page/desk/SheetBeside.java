package rillwright.cli.page.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.output.OutputFile;

/** Data sheets that are put into the folder {@code pumps} beside a project. */
public final class SheetBeside {
  private static final String FOLDER = "pumps";

  private SheetBeside() {}

  /**
   * Puts one there; the first one of its name stays beside it as {@code .previous}.
   *
   * @param project its file
   * @param model the sheet's name without its ending
   * @return where it lies, as the project names it
   * @throws InvalidInput if the name is none, or it cannot be written
   */
  public static String put(Path project, String model, String text) {
    if (!model.matches("[A-Za-z0-9][A-Za-z0-9 ._-]{0,56}")) {
      throw wrong(project, "a data sheet's name has letters, digits, blanks, dots and dashes");
    }
    String name = FOLDER + "/" + model + ".csv";
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Path target = project.resolveSibling(FOLDER).resolve(model + ".csv");
    try {
      Files.createDirectories(target.getParent());
      Path home = project.toAbsolutePath().getParent().toRealPath();
      if (!target.getParent().toRealPath().startsWith(home)) {
        throw wrong(project, "the folder " + FOLDER + " lies elsewhere; nothing is written there");
      }
      if (Files.exists(target)) {
        byte[] before = Files.readAllBytes(target);
        if (Arrays.equals(before, bytes)) {
          return name;
        }
        Path previous = target.resolveSibling(model + ".csv.previous");
        if (!Files.exists(previous)) {
          new OutputFile(previous, "data sheet before").write(before);
        }
      }
    } catch (IOException e) {
      throw wrong(project, "the data sheet cannot be written beside the project");
    }
    new OutputFile(target, "data sheet").write(bytes);
    return name;
  }

  private static InvalidInput wrong(Path project, String message) {
    return new InvalidInput(Place.whole(project.toString()), message);
  }
}
