package rillwright.cli.file;

import java.nio.file.Path;
import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.change.FormerNames;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.pump.UnknownPump;
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
    return read(file, changes, List.of());
  }

  /**
   * The project in a file.
   *
   * @param sheetFolders where its data sheets may lie besides its own folder
   * @throws InvalidInput with everything that is wrong
   */
  public static Project read(Path file, List<String> changes, List<Path> sheetFolders) {
    return read(SourceText.read(file), file, changes, sheetFolders);
  }

  /**
   * The project that a text is before it lies in a file.
   *
   * @param file where it is to lie
   * @throws InvalidInput with everything that is wrong
   */
  public static Project of(String text, Path file) {
    return read(new SourceText(file.toString(), text), file, List.of(), List.of());
  }

  private static Project read(
      SourceText source, Path file, List<String> changes, List<Path> sheetFolders) {
    MapNode tree = UnknownPump.withBends(FormerNames.renewedIn(TreeReader.read(source)));
    FolderSheets sheets = FolderSheets.fenced(file.resolveSibling(""), sheetFolders);
    PhotoFolder photos = new PhotoFolder(file.resolveSibling(""));
    return new ProjectMapping(Catalogue.standard(), sheets, photos, file.toString())
        .mapWith(tree, changes, changes);
  }
}
