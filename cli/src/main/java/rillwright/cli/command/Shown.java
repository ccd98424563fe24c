package rillwright.cli.command;

import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.report.units.ShownUnits;

/** The units that a project asks for. */
final class Shown {
  private Shown() {}

  static ShownUnits of(Project project) {
    return project.show() == Show.METRIC ? ShownUnits.METRIC : ShownUnits.US;
  }
}
