package rillwright.cli.study.mend.change;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.curves.sheet.DataSheet;

/**
 * Pumps of a supplier.
 *
 * @param sheets by model
 * @param folder before the name of each file, as a project names it; with its separator
 */
public record Offered(Map<String, DataSheet> sheets, String folder) {
  /** None. */
  public static final Offered NOTHING = new Offered(Map.of(), "");

  public Offered {
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }

  public String pathOf(String model) {
    return folder + model + ".csv";
  }
}
