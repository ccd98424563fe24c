package rillwright.cli.file.pump;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.FileBytes;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.DataSheetReader;
import rillwright.curves.sheet.fault.SheetFaults;

/**
 * Data sheets in files whose paths are relative to a folder. Each file is read once; several
 * threads may ask at a time.
 */
public final class FolderSheets implements SheetSource {
  private final Path folder;
  private final Map<Path, byte[]> read = new ConcurrentHashMap<>();

  /**
   * Data sheets beside a file.
   *
   * @param folder that of the project file
   */
  public FolderSheets(Path folder) {
    this.folder = folder;
  }

  @Override
  public DataSheet read(String path, double densityKgPerM3) {
    Path file = resolve(path);
    String name = file.toString();
    try {
      return new DataSheetReader(densityKgPerM3)
          .read(name, read.computeIfAbsent(file, FileBytes::read));
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
