package rillwright.cli.file;

import java.nio.file.Path;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.change.Changes;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.fault.InvalidInput;
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
   * @throws InvalidInput with everything that is wrong
   */
  public static Project read(Path file, List<String> changes) {
    MapNode tree = TreeReader.read(SourceText.read(file));
    FaultList faults = new FaultList(file.toString());
    for (String change : changes) {
      try {
        tree = Changes.apply(tree, change);
      } catch (InvalidInput wrong) {
        wrong.faults().forEach(faults::add);
      }
    }
    ProjectMapping mapping = mappingBeside(file);
    if (faults.size() > 0) {
      addFaults(tree, mapping, file.toString(), faults);
    }
    faults.throwIfAny();
    return mapping.map(tree, file.toString());
  }

  /** What else is wrong, with the changes that could be made. */
  private static void addFaults(
      MapNode tree, ProjectMapping mapping, String file, FaultList faults) {
    try {
      mapping.map(tree, file);
    } catch (InvalidInput wrong) {
      wrong.faults().forEach(faults::add);
    }
  }

  /** The mapping of files that lie where another lies. */
  public static ProjectMapping mappingBeside(Path file) {
    Path folder = file.resolveSibling("");
    return new ProjectMapping(Catalogue.standard(), new FolderSheets(folder));
  }
}
