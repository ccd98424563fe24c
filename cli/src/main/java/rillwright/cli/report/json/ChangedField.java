package rillwright.cli.report.json;

import java.util.List;

/** {@code changed}: what was changed on the command line, as written. */
final class ChangedField {
  private ChangedField() {}

  static void write(Json json, List<String> changes) {
    json.array("changed", () -> changes.forEach(json::words));
  }
}
