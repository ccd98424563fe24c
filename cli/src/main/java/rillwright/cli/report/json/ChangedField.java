package rillwright.cli.report.json;

import java.util.List;

/** {@code changed}: what was changed on the command line, as written. */
final class ChangedField {
  private ChangedField() {}

  static void write(Json json, List<String> changes) {
    json.array("changed", () -> changes.forEach(json::words));
  }

  /** The same, left out where nothing was changed. */
  static void writeIfAny(Json json, List<String> changes) {
    if (!changes.isEmpty()) {
      write(json, changes);
    }
  }
}
