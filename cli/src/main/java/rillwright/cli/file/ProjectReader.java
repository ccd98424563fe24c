package rillwright.cli.file;

import java.nio.file.Path;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.change.Changes;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/** Reads project files. */
public final class ProjectReader {
  private ProjectReader() {}

  /**
   * The project in a file.
   *
   * @param file YAML or JSON; data sheets are found relative to its folder
   * @param changes values to change first: {@code lines.intake.skimmer.clogged=40 %}
   * @throws rillwright.cli.file.fault.InvalidInput with everything that is wrong
   */
  public static Project read(Path file, List<String> changes) {
    MapNode tree = TreeReader.read(SourceText.read(file));
    for (String change : changes) {
      tree = Changes.apply(tree, change);
    }
    return mappingBeside(file).map(tree, file.toString());
  }

  /** The mapping of files that lie where another lies. */
  public static ProjectMapping mappingBeside(Path file) {
    Path folder = file.resolveSibling("");
    return new ProjectMapping(Catalogue.standard(), new FolderSheets(folder));
  }
}
