package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpSuction;

/** What is taken beyond the data sheets of pumps, and what they ask for. */
public final class SheetNotes {
  private final Project project;
  private final ShownUnits units;
  private final List<String> notes = new ArrayList<>();

  private SheetNotes(Project project, ShownUnits units) {
    this.project = project;
    this.units = units;
  }

  /** Sentences about all sheets of a project. */
  static List<String> in(Project project, ShownUnits units) {
    SheetNotes found = new SheetNotes(project, units);
    double density = project.network().water().densityKgPerM3();
    project
        .sheets()
        .forEach(
            (name, sheet) ->
                CurveNotes.of(sheet.curve(), density, units)
                    .forEach(note -> found.notes.add("pump \"" + name + "\": " + note)));
    for (Line line : project.network().lines()) {
      for (Part part : line.parts()) {
        if (part instanceof Pump pump) {
          found.submergence(line, pump);
          found.elevation(line, line.parts().indexOf(part));
        }
      }
    }
    return found.notes;
  }

  private void elevation(Line line, int place) {
    if (PumpSuction.elevationM(project.network(), line, place).isEmpty()) {
      notes.add("line " + unchecked(project.network(), line.name()));
    }
  }

  /** That the suction of a line's pump is not checked, and why. */
  public static String unchecked(Network network, LineName line) {
    Point from = network.point(network.line(line).from());
    return "\""
        + line.value()
        + "\": "
        + (from instanceof Chamber
            ? "its pump is not the first part after \""
                + from.name().value()
                + "\", so it is taken to stand outside; give the level of its own inlet"
                + " (\"elevation\" of the pump), or"
            : "the level of its pump's inlet is not given (\"elevation\" of the pump), so")
        + " neither the water over it nor its suction head (NPSH) is checked";
  }

  private void submergence(Line line, Pump pump) {
    DataSheet sheet = project.sheets().get(pump.model());
    OptionalDouble needed =
        sheet == null ? OptionalDouble.empty() : sheet.facts().needs().minSubmergenceM();
    Network network = project.network();
    if (needed.isEmpty() || !(network.point(line.from()) instanceof Chamber chamber)) {
      return;
    }
    OptionalDouble water = network.points(Basin.class).stream().mapToDouble(Basin::levelM).max();
    double most = water.orElse(Double.POSITIVE_INFINITY) - chamber.intakeM();
    notes.add(
        "line \""
            + line.name().value()
            + "\": the pump's data sheet requires "
            + units.width(needed.getAsDouble())
            + " of water over its inlet"
            + (most < needed.getAsDouble()
                ? "; over the intake of \""
                    + chamber.name().value()
                    + "\" there are "
                    + units.width(Math.max(0, most))
                    + " at most: it may draw air; set it lower"
                : "; \"solve\" gives the depth"));
  }
}
