package rillwright.cli.file.pump;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.curves.sheet.DataSheet;

/**
 * The pumps that a project names.
 *
 * @param names of all, those with a faulty sheet too
 * @param sheets of those whose sheet is right, by name
 */
public record PumpTable(List<String> names, Map<String, DataSheet> sheets) {
  public PumpTable {
    names = List.copyOf(names);
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }

  /** The sheet of a pump; empty if there is none or it is faulty. */
  public Optional<DataSheet> findSheet(String name) {
    return Optional.ofNullable(sheets.get(name));
  }
}
