package rillwright.cli.report.json;

import java.util.List;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;

/** {@code findings}: what the crew should know. */
final class FindingFields {
  private FindingFields() {}

  /** All findings, in their order. */
  static void write(Json json, List<? extends Finding> findings, Wording wording) {
    json.array(
        "findings",
        () ->
            findings.forEach(
                finding -> write(json, finding.code(), finding.at(), finding.message(wording))));
  }

  /** One of them. */
  static void write(Json json, String code, String at, String message) {
    json.object(
        () -> {
          json.words("code", code);
          json.words("at", at);
          json.words("message", message);
        });
  }
}
