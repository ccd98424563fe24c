package rillwright.cli.study.sheet;

import java.util.List;
import rillwright.cli.file.Show;

/**
 * Data sheets that were read.
 *
 * @param sheets at least one
 * @param show units to tell them in
 */
public record PumpSheets(List<SheetFigures> sheets, Show show) {
  public PumpSheets {
    sheets = List.copyOf(sheets);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("no data sheet");
    }
  }
}
