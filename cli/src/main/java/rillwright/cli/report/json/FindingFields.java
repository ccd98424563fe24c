package rillwright.cli.report.json;

import java.util.List;
import java.util.Locale;
import rillwright.solver.finding.Figure;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;

/** {@code findings}: what the crew should know. */
final class FindingFields {
  private FindingFields() {}

  /** All findings, in their order. */
  static void write(Json json, List<Finding> findings, Wording wording) {
    json.array(
        "findings",
        () -> findings.forEach(finding -> json.object(() -> write(json, finding, wording))));
  }

  private static void write(Json json, Finding finding, Wording wording) {
    json.words("code", finding.code());
    json.words("at", finding.at());
    json.words("message", finding.message(wording));
    json.words("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    json.array(
        "figures",
        () -> finding.figures().forEach(figure -> json.object(() -> figure(json, figure))));
  }

  private static void figure(Json json, Figure figure) {
    json.words("name", figure.name());
    json.number("value", figure.value());
    json.words("unit", figure.unit().symbol());
  }
}
