package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Project files written in tests; all data in them is invented. */
final class ProjectText {
  /** A folder with the data sheets that tests name. */
  static final Path FOLDER = Path.of("src/test/resources/rillwright/cli/file");

  /** Two basins, a tee, a fall and an outlet to draw lines between. */
  static final String POINTS =
      """
      rillwright: 1
      points:
        pond: {kind: basin, level: 0 ft}
        low: {kind: basin, level: -1 m}
        chamber: {kind: chamber, floor: -36 in}
        split: {kind: tee}
        fall: {kind: fall, crest: 4 ft, width: 30 in}
        jet: {kind: outlet, elevation: 1 m}
      lines:
        to the fall: {from: pond, to: fall, pipe: {inside: 2 in, factor: 0.02}, parts: [run: 1 m]}
        to the jet: {from: pond, to: jet, pipe: {inside: 2 in, factor: 0.02}, parts: [run: 1 m]}
      """;

  private ProjectText() {}

  static MapNode tree(String text) {
    String name = text.startsWith("{") ? "pond.json" : "pond.yaml";
    return TreeReader.read(SourceText.of(name, text.getBytes(StandardCharsets.UTF_8)));
  }

  static Project read(String text) {
    return map(tree(text));
  }

  static Project map(MapNode tree) {
    return new ProjectMapping(
            Catalogue.standard(), new FolderSheets(FOLDER), new PhotoFolder(FOLDER), "pond.yaml")
        .map(tree, List.of());
  }

  /** All that is wrong with a text, one fault a line. */
  static String faultsOf(String text) {
    return assertThrows(InvalidInput.class, () -> read(text), text).getMessage();
  }

  /** The project of {@link #POINTS} with one line more, called "line". */
  static Project withLine(String line) {
    return read(POINTS + "  line: " + line + "\n");
  }

  static Line lineOf(Project project) {
    return project.network().line(new LineName("line"));
  }

  static Point pointOf(Project project, String name) {
    return project.network().point(new PointName(name));
  }

  /** The part at a place, from 0, of the line called "line". */
  static Part partOf(Project project, int index) {
    return lineOf(project).parts().get(index);
  }
}
