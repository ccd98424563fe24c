package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.law.pump.MoreOutThanIn;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpSuction;

/** What is taken beyond the data sheets of pumps, and what they ask for. */
final class SheetNotes {
  /** A sheet that goes down to this share of its first head goes far enough. */
  private static final double LOW_HEAD_SHARE = 0.2;

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
    project.sheets().forEach(found::sheet);
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

  private void sheet(String name, DataSheet sheet) {
    PumpCurve curve = sheet.curve();
    List<PumpPoint> points = curve.points();
    PumpPoint first = points.get(0);
    PumpPoint last = points.get(points.size() - 1);
    String pump = "pump \"" + name + "\": ";
    MoreOutThanIn.find(curve, project.network().water().densityKgPerM3())
        .ifPresent(worst -> power(pump, worst));
    if (first.flowM3PerS() > 0) {
      notes.add(
          pump
              + "its data sheet begins at "
              + units.writtenFlow(first.flowM3PerS())
              + "; the shut-off head of "
              + units.head(curve.publishedShutOffHeadM())
              + " is extended from there");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).headM() >= points.get(i - 1).headM()) {
        hump(pump, points.get(i - 1), points.get(i));
      }
    }
    if (last.headM() > LOW_HEAD_SHARE * first.headM()) {
      notes.add(
          pump
              + "its data sheet ends at "
              + units.writtenFlow(last.flowM3PerS())
              + ", where it still makes "
              + units.writtenHead(last.headM())
              + "; beyond, its curve is extended");
    }
  }

  private void power(String pump, MoreOutThanIn worst) {
    notes.add(
        pump
            + "the power on its data sheet cannot be right: hydraulic output exceeds electrical"
            + " input at "
            + units.writtenFlow(worst.flowM3PerS())
            + ", "
            + units.power(worst.waterPowerW())
            + " of water from "
            + units.power(worst.powerW())
            + "; check the unit");
  }

  private void hump(String pump, PumpPoint before, PumpPoint row) {
    notes.add(
        pump
            + "its head at "
            + units.writtenFlow(row.flowM3PerS())
            + ", "
            + units.writtenHead(row.headM())
            + ", is not below the "
            + units.writtenHead(before.headM())
            + " at "
            + units.writtenFlow(before.flowM3PerS())
            + "; check that row. The hump is levelled");
  }

  private void elevation(Line line, int place) {
    if (PumpSuction.elevationM(project.network(), line, place).isEmpty()) {
      notes.add(
          "line \""
              + line.name().value()
              + "\": its pump has no \"elevation\" (of its inlet), so neither NPSH nor submergence"
              + " is checked");
    }
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
