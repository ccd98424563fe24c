package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.report.check.CheckNotes;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.text.PointWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.check.Checked;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.pumping.PumpPlace;

/**
 * What a project file says, for programs: {@code points} and {@code lines} by name, each with its
 * kind or ends and with words for people; {@code pumps} with their sheets; {@code notes}; and as
 * {@code findings} what must be decided before anything flows.
 */
public final class CheckJson {
  private final Json json;
  private final Checked checked;

  private CheckJson(Json json, Checked checked) {
    this.json = json;
    this.checked = checked;
  }

  /** The JSON text. */
  public static String of(Checked checked) {
    return Json.object(
        json -> {
          new CheckJson(json, checked).write(checked.project());
          ChangedField.write(json, checked.changes());
        });
  }

  private void write(Project project) {
    json.words("title", project.title());
    json.object("points", () -> project.network().points().forEach(this::point));
    json.object("lines", () -> project.network().lines().forEach(this::line));
    json.object("pumps", () -> project.sheets().forEach(this::pump));
    json.array("notes", () -> CheckNotes.of(checked).forEach(json::words));
    FindingFields.write(
        json,
        PumpPlace.listPlanned(project.network()).stream().map(CheckJson::planned).toList(),
        Shown.of(checked));
  }

  private void point(Point point) {
    json.object(
        point.name().value(),
        () -> {
          json.words("kind", point.kind());
          json.number("wantM3PerS", point.wantM3PerS());
          json.words("words", PointWords.of(point, Shown.of(checked)));
        });
  }

  private void line(Line line) {
    json.object(
        line.name().value(),
        () -> {
          json.words("from", line.from().value());
          json.words("to", line.to().value());
          json.number(
              "insideM",
              line.mainBore()
                  .map(bore -> OptionalDouble.of(bore.diameterM()))
                  .orElse(OptionalDouble.empty()));
          json.array("parts", () -> line.parts().forEach(this::part));
        });
  }

  private void part(Part part) {
    json.object(
        () -> {
          json.words("part", part.kind());
          json.words("words", PartWords.of(part, Shown.of(checked)));
        });
  }

  private void pump(String name, DataSheet sheet) {
    PumpCurve curve = sheet.curve();
    json.object(
        name,
        () -> {
          json.whole("points", curve.points().size());
          json.number("shutOffHeadM", curve.publishedShutOffHeadM());
          json.number("greatestFlowM3PerS", curve.lastFlowM3PerS());
          json.truth("levelled", curve.isLevelled());
        });
  }

  private static Finding planned(PumpPlace place) {
    return Finding.of(
        Severity.NOTE,
        "pump-to-be-chosen",
        place.line().value(),
        "Its pump is still to be chosen; \"rillwright duty\" tells what it must make.");
  }
}
