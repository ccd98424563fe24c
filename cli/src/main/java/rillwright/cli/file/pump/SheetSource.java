package rillwright.cli.file.pump;

import rillwright.cli.file.fault.InvalidInput;

/** Where the data sheets that a project names are found. */
public interface SheetSource {

  /**
   * Reads a data sheet.
   *
   * @param path as the project names it
   * @throws InvalidInput if there is none or it is wrong
   */
  PumpSheet read(String path);
}
