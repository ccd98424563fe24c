package rillwright.cli.file.pump;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.FileBytes;
import rillwright.cli.wording.FileNames;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.DataSheetReader;
import rillwright.curves.sheet.fault.SheetFaults;

/**
 * Data sheets in files whose paths are relative to a folder. Each file is read once; several
 * threads may ask at a time.
 */
public final class FolderSheets implements SheetSource {
  private final Path folder;
  private final Optional<Fence> fence;
  private final Map<Path, byte[]> bytes = new ConcurrentHashMap<>();
  private final Map<SheetInWater, DataSheet> sheets = new ConcurrentHashMap<>();

  /** A sheet in water of a density. */
  private record SheetInWater(Path file, double densityKgPerM3) {}

  private FolderSheets(Path folder, Optional<Fence> fence) {
    this.folder = folder;
    this.fence = fence;
  }

  /**
   * Data sheets that may lie anywhere.
   *
   * @param folder where paths begin
   */
  public FolderSheets(Path folder) {
    this(folder, Optional.empty());
  }

  /**
   * Data sheets that a project names: what somebody else has written into it must not read other
   * files of the user's.
   *
   * @param folder that of the project file
   * @param others folders besides it that the user allows
   */
  public static FolderSheets fenced(Path folder, List<Path> others) {
    List<Path> allowed = new ArrayList<>(others);
    allowed.add(folder);
    return new FolderSheets(folder, Optional.of(new Fence(allowed)));
  }

  @Override
  public DataSheet read(String path, double densityKgPerM3) {
    Path file = resolve(path);
    String name = file.toString();
    if (fence.isPresent() && !fence.get().holds(file)) {
      throw new InvalidInput(
          Place.whole(name),
          "this lies outside the project's folder; put it there, or allow its folder with"
              + " \"--sheets FOLDER\"");
    }
    if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
      throw new InvalidInput(
          Place.whole(name), "this is a device or a pipe; a data sheet is an ordinary file");
    }
    return sheets.computeIfAbsent(new SheetInWater(file, densityKgPerM3), this::read);
  }

  private DataSheet read(SheetInWater sheet) {
    String name = sheet.file.toString();
    try {
      return new DataSheetReader(sheet.densityKgPerM3)
          .read(name, bytes.computeIfAbsent(sheet.file, FileBytes::read));
    } catch (SheetFaults e) {
      throw new InvalidInput(
          e.faults().stream()
              .map(fault -> new Fault(name, fault.line(), fault.column(), fault.message()))
              .toList());
    }
  }

  private Path resolve(String path) {
    return find(path)
        .orElseThrow(() -> new InvalidInput(Place.whole(path), FileNames.whyNot(path)));
  }

  /** Where a sheet is looked for; empty if that cannot be a path. */
  public Optional<Path> find(String path) {
    try {
      return Optional.of(folder.resolve(path));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
