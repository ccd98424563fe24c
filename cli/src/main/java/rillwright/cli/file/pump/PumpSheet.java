package rillwright.cli.file.pump;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.solver.law.pump.PumpCurve;

/**
 * A pump's data sheet.
 *
 * @param curve of one pump at full speed
 * @param facts what else it says, by name, as written
 */
public record PumpSheet(PumpCurve curve, Map<String, String> facts) {
  public PumpSheet {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
  }
}
