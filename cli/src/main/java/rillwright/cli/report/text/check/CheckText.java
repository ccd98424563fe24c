package rillwright.cli.report.text.check;

import java.util.List;
import java.util.Map;
import rillwright.cli.file.Project;
import rillwright.cli.report.check.CheckNotes;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.text.PointWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.check.Checked;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.finding.Finding;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;

/** What a project file says, on one page. */
public final class CheckText {
  private CheckText() {}

  /** The page. */
  public static Page of(Checked checked) {
    Project project = checked.project();
    ShownUnits units = Shown.of(checked);
    PageBuilder page = ChangedWords.page(project.title(), checked.changes());
    page.paragraph(summary(project, units));
    page.table(points(project.network(), units));
    page.table(lines(project.network(), units));
    if (project.network().lines().stream()
        .anyMatch(line -> LineSentence.of(line, units).contains("(K "))) {
      page.paragraph(PartWords.K);
    }
    TableBuilder pumps = pumps(project.sheets(), units);
    page.tableOfAny(pumps);
    List<Finding> findings = checked.findings();
    if (!findings.isEmpty()) {
      page.heading("WARNINGS");
      findings.forEach(finding -> page.marked("! ", finding.message(units)));
    }
    List<String> notes = CheckNotes.of(checked);
    if (!notes.isEmpty()) {
      page.heading("NOTES");
      notes.forEach(note -> page.marked("- ", note));
    }
    return page.build();
  }

  private static String summary(Project project, ShownUnits units) {
    Network network = project.network();
    return "No errors found in the file. It has "
        + counted(network.points().size(), "point")
        + ", "
        + counted(network.lines().size(), "line")
        + " and "
        + counted(project.sheets().size(), "pump sheet")
        + "; units shown: "
        + String.join(", ", units.symbols())
        + ".";
  }

  private static String counted(int count, String what) {
    return (count == 0 ? "no" : count) + " " + what + (count == 1 ? "" : "s");
  }

  private static TableBuilder points(Network network, ShownUnits units) {
    TableBuilder table =
        new TableBuilder("POINTS").column("kind", Side.LEFT).column("description", Side.LEFT);
    for (Point point : network.points()) {
      table.row(point.name().value(), point.kind(), PointWords.of(point, units));
    }
    return table;
  }

  private static TableBuilder lines(Network network, ShownUnits units) {
    TableBuilder table =
        new TableBuilder("LINES")
            .column("from", Side.LEFT)
            .column("to", Side.LEFT)
            .column("parts, in flow order", Side.LEFT);
    for (Line line : network.lines()) {
      table.row(
          line.name().value(),
          line.from().value(),
          line.to().value(),
          LineSentence.of(line, units));
    }
    return table;
  }

  private static TableBuilder pumps(Map<String, DataSheet> sheets, ShownUnits units) {
    TableBuilder table =
        new TableBuilder("PUMP SHEETS")
            .column("points", Side.RIGHT)
            .column("shut-off", Side.RIGHT)
            .column("greatest flow", Side.RIGHT)
            .column("draws", Side.LEFT);
    for (Map.Entry<String, DataSheet> sheet : sheets.entrySet()) {
      PumpCurve curve = sheet.getValue().curve();
      table.row(
          sheet.getKey(),
          Integer.toString(curve.points().size()),
          shutOff(curve, units),
          units.writtenFlow(curve.lastFlowM3PerS()),
          power(curve, units));
    }
    return table;
  }

  private static String shutOff(PumpCurve curve, ShownUnits units) {
    double head = curve.publishedShutOffHeadM();
    return curve.points().get(0).flowM3PerS() > 0
        ? units.head(head) + ", extended"
        : units.writtenHead(head);
  }

  private static String power(PumpCurve curve, ShownUnits units) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (PumpPoint point : curve.points()) {
      if (point.powerW().isPresent()) {
        least = Math.min(least, point.powerW().getAsDouble());
        most = Math.max(most, point.powerW().getAsDouble());
      }
    }
    return least > most ? "not given" : units.powers(least, most);
  }
}
