package rillwright.cli.report.text.visit;

import java.util.Set;
import java.util.TreeSet;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.study.solve.Solved;

/** What the crew should read on the day it starts the water, and how. */
public final class VisitSheet {
  private VisitSheet() {}

  /** Prints it. */
  public static void print(Solved solved, PageBuilder page) {
    TableBuilder table =
        new TableBuilder("READINGS ON THE DAY")
            .column("what", Side.LEFT)
            .column("expect", Side.RIGHT)
            .column("accept between", Side.RIGHT);
    Set<Hint> hints = new TreeSet<>();
    FallReadings.add(solved, table, hints);
    GaugeRows.add(solved, table, hints);
    PumpReadings.add(solved, table, hints);
    LevelReadings.add(solved, table, hints);
    if (table.isEmpty()) {
      return;
    }
    page.table(table);
    page.space();
    hints.add(Hint.BANDS);
    hints.add(Hint.HANDS);
    hints.forEach(hint -> page.marked("- ", hint.sentence()));
  }
}
