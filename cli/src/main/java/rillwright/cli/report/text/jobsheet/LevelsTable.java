package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.Locale;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SiteLevel;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Run;

/** The levels that are built to, the highest first, and how deep pipe is usually laid. */
final class LevelsTable {
  private static final int LONGEST_NAME = 22;

  private LevelsTable() {}

  static void print(SheetAnswer answer, PageBuilder page) {
    ShownUnits units = Shown.of(answer);
    TableBuilder table =
        new TableBuilder("LEVELS", LONGEST_NAME)
            .column("where", Side.LEFT)
            .column("width", Side.RIGHT)
            .column("level", Side.RIGHT)
            .column("as set", Side.LEFT);
    for (SiteLevel level : answer.levels()) {
      table.row(
          level.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
          List.of(
              Cell.of(level.at()),
              Cell.of(level.widthM().stream().mapToObj(units::width).findFirst().orElse("")),
              Cell.of(units.level(level.levelM())),
              Cell.toWrite()));
    }
    page.table(table);
    page.paragraph(
        "All levels count from 0: mark that height on site first, then set the others by laser or"
            + " water level."
            + (answer.network().placed(Run.class).isEmpty()
                ? ""
                : " The file gives no trench depth: "
                    + units.tools().trenchDepth()
                    + " is usual, below frost depth or self-draining (common practice, no source);"
                    + " no stretch of pipe higher than the file says. Local codes decide."
                    + (answer.network().placed(CheckValve.class).isEmpty()
                        ? ""
                        : " Lines with a check valve and those downstream of one do not drain by"
                            + " themselves: lay them below frost depth or drain them before the "
                            + "frost.")));
  }
}
