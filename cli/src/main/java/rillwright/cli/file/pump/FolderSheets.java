package rillwright.cli.file.pump;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.FileBytes;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.DataSheetReader;
import rillwright.curves.sheet.fault.SheetFaults;

/**
 * Data sheets in files whose paths are relative to a folder.
 *
 * @param folder that of the project file
 */
public record FolderSheets(Path folder) implements SheetSource {

  @Override
  public DataSheet read(String path, double densityKgPerM3) {
    Path file = resolve(path);
    String name = file.toString();
    try {
      return new DataSheetReader(densityKgPerM3).read(name, FileBytes.read(file));
    } catch (SheetFaults e) {
      throw new InvalidInput(
          e.faults().stream()
              .map(fault -> new Fault(name, fault.line(), fault.column(), fault.message()))
              .toList());
    }
  }

  private Path resolve(String path) {
    return find(path)
        .orElseThrow(
            () -> new InvalidInput(Place.whole(path), "this cannot be the path of a file"));
  }

  /** Where a sheet is looked for; empty if that cannot be a path. */
  public Optional<Path> find(String path) {
    try {
      return Optional.of(folder.resolve(path.strip()));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
