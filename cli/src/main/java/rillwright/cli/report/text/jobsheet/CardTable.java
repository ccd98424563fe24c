package rillwright.cli.report.text.jobsheet;

import java.util.List;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Head.Fact;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.visit.ReadingWords;
import rillwright.cli.report.text.visit.VisitSheet;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.jobsheet.card.CardReading;

/** The card for the readings at start-up, on a sheet of its own. */
final class CardTable {
  private CardTable() {}

  static void print(AsSet set, PageBuilder page) {
    if (set.card().isEmpty()) {
      return;
    }
    page.newSheet("START-UP CARD");
    page.show(new Head.Facts(List.of(new Fact("Read by", ""), new Fact("Date", ""))));
    page.paragraph(
        set.settings().isPresent()
            ? "Set the valves first; then read, and write down what was read."
            : "Read, and write down what was read.");
    page.table(table(set));
    page.space();
    VisitSheet.hints(set.solved(), set.card(), page);
  }

  private static TableBuilder table(AsSet set) {
    ShownUnits units = Shown.of(set.solved());
    TableBuilder table =
        new TableBuilder("")
            .column("what", Side.LEFT)
            .column("with", Side.LEFT)
            .column("expect", Side.RIGHT)
            .column("between", Side.RIGHT)
            .column("read", Side.LEFT);
    String before = "";
    for (CardReading reading : set.card()) {
      ReadingWords words = ReadingWords.of(reading, units);
      table.row(
          reading.at().equals(before) ? "" : reading.at(),
          List.of(
              Cell.of(words.what()),
              Cell.of(words.with()),
              Cell.of(words.expect()),
              Cell.of(words.between()),
              Cell.toWrite()));
      before = reading.at();
    }
    return table;
  }
}
