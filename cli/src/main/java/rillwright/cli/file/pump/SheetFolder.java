package rillwright.cli.file.pump;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.wording.Beside;
import rillwright.cli.wording.Choices;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.wording.PlainText;

/**
 * All data sheets of a folder: a supplier's list.
 *
 * @param sheets those that are right, by the file's name without its ending, in alphabetical order
 * @param faults what is wrong with the others
 */
public record SheetFolder(Map<String, DataSheet> sheets, List<Fault> faults) {
  private static final String ENDING = ".csv";

  public SheetFolder {
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
    faults = List.copyOf(faults);
  }

  /**
   * Reads a folder.
   *
   * @param densityKgPerM3 of the water in which heads given as pressures are stated
   * @throws InvalidInput if it is no folder, holds no data sheet, or none that is right
   */
  public static SheetFolder read(Path folder, double densityKgPerM3) {
    List<Path> files = list(folder);
    FolderSheets source = new FolderSheets(folder);
    Map<String, DataSheet> sheets = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      try {
        String model = name.substring(0, name.length() - ENDING.length());
        sheets.put(model, source.read(name, densityKgPerM3));
      } catch (InvalidInput wrong) {
        faults.addAll(wrong.faults());
      }
    }
    if (sheets.isEmpty()) {
      if (!holding(folder).isEmpty()) {
        faults.add(
            0,
            Fault.at(
                Place.whole(folder.toString()), "no data sheet lies here" + elsewhere(folder)));
      }
      throw new InvalidInput(faults);
    }
    return new SheetFolder(sheets, faults);
  }

  /**
   * Where a folder is.
   *
   * @throws InvalidInput if it is none
   */
  public static Place requireFolder(Path folder) {
    Place place = Place.whole(folder.toString());
    if (!Files.exists(folder)) {
      throw new InvalidInput(
          place,
          "there is no such folder; name the one that holds the data sheets" + meant(folder));
    }
    if (!Files.isDirectory(folder)) {
      throw new InvalidInput(place, "this is a file; name the folder that holds the data sheets");
    }
    return place;
  }

  /** Folders that lie where it was looked for. */
  private static String meant(Path folder) {
    Path name = folder.getFileName();
    return name == null
        ? ""
        : Choices.hint(name.toString(), Beside.names(Beside.folderOf(folder), Files::isDirectory));
  }

  /** Where some lie instead, else what one is. */
  private static String elsewhere(Path folder) {
    List<String> holding = holding(folder);
    return holding.isEmpty()
        ? "; a data sheet is a file that ends in .csv and begins with \"flow [gph],head [ft],power"
            + " [W]\""
        : "; a folder in it has some: "
            + PlainText.quoted(folder.resolve(holding.get(0)).toString());
  }

  /** Folders in a folder in which files lie that may be data sheets. */
  private static List<String> holding(Path folder) {
    return Beside.names(
        folder,
        entry -> Files.isDirectory(entry) && !Beside.names(entry, SheetFolder::isSheet).isEmpty());
  }

  private static boolean isSheet(Path entry) {
    String name = entry.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.endsWith(ENDING) && Files.isRegularFile(entry);
  }

  /**
   * The data sheets that lie in a folder, in alphabetical order.
   *
   * @throws InvalidInput if it is no folder or holds no data sheet
   */
  public static List<Path> list(Path folder) {
    Place place = requireFolder(folder);
    List<Path> files =
        Beside.names(folder, SheetFolder::isSheet).stream().map(folder::resolve).toList();
    if (files.isEmpty()) {
      throw new InvalidInput(place, "no data sheet lies in this folder" + elsewhere(folder));
    }
    return files;
  }
}
