package rillwright.cli.file.pump;

import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.sheet.DataSheet;

/** Where the data sheets that a project names are found. */
public interface SheetSource {

  /**
   * Reads a data sheet.
   *
   * @param path as the project names it
   * @param densityKgPerM3 of the water in which heads given as pressures are stated
   * @throws InvalidInput if there is none or it is wrong
   */
  DataSheet read(String path, double densityKgPerM3);
}
