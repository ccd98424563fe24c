package rillwright.cli.report.json;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.finding.Figure;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;

/**
 * A finding for programs.
 *
 * @param finding what is found
 * @param units of its message
 */
record FoundJson(Finding finding, ShownUnits units) {
  private static final Shape<Figure> FIGURE =
      Shape.<Figure>of()
          .words("name", "What it is.", Figure::name)
          .number("value", Quantity.NUMBER, "In the unit.", Figure::value)
          .member(
              "unit",
              Value.oneOf(Arrays.stream(Figure.Unit.values()).map(Figure.Unit::symbol).toList()),
              "SI, or days; 1 for shares and plain numbers.",
              figure -> figure.unit().symbol());

  static final Shape<FoundJson> SHAPE =
      Shape.<FoundJson>named("finding", "One thing that the crew should know.")
          .member(
              "code",
              Value.matching("^[a-z0-9]+(-[a-z0-9]+)*$"),
              "A short stable code.",
              found -> found.finding.code())
          .words("at", "The point or line that it is about.", found -> found.finding.at())
          .member(
              "message",
              Value.someWords(),
              "What is so and what to do about it.",
              found -> found.finding.message(found.units))
          .member(
              "severity",
              Value.oneOf(Arrays.stream(Severity.values()).map(FoundJson::word).toList()),
              "How grave it is: danger where somebody may be hurt or a pump ruined, problem where"
                  + " the job does not do what it should, advice where something would make it"
                  + " better, note else.",
              found -> word(found.finding.severity()))
          .list("figures", FIGURE, "The figures in the message.", found -> found.finding.figures());

  static List<FoundJson> list(List<Finding> findings, ShownUnits units) {
    return findings.stream().map(finding -> new FoundJson(finding, units)).toList();
  }

  private static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
