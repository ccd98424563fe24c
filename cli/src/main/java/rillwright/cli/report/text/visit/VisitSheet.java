package rillwright.cli.report.text.visit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.card.Card;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.solve.Solved;

/** What the crew should read on the day it starts the water, and how. */
public final class VisitSheet {
  private static final String NONE =
      "None: the pump draws a chamber down to its intake and draws air, so nothing is steady"
          + " while it runs. Do not leave it running so; mend that first.";

  private static final String BOILS =
      "None: water boils at a pump's inlet, so it gives less than is computed. Do not leave it"
          + " running so; mend that first.";

  private VisitSheet() {}

  /** Prints it. */
  public static void print(Solved solved, PageBuilder page) {
    ShownUnits units = Shown.of(solved);
    TableBuilder table =
        new TableBuilder("READINGS ON THE DAY")
            .column("what", Side.LEFT)
            .column("expect", Side.RIGHT)
            .column("between", Side.RIGHT);
    List<CardReading> card = Card.of(solved);
    String before = "";
    for (CardReading reading : card) {
      ReadingWords words = ReadingWords.of(reading, units);
      table.row(
          reading.at().equals(before) ? "" : reading.at(),
          words.with().equals("watt meter") ? words.what() + ", watt meter" : words.what(),
          words.expect(),
          words.between());
      before = reading.at();
    }
    if (table.isEmpty()) {
      if (solved.state().starves() || solved.boils()) {
        page.heading("READINGS ON THE DAY");
        page.paragraph(solved.state().starves() ? NONE : BOILS);
      }
      return;
    }
    page.table(table);
    page.space();
    hints(solved, card, page);
  }

  /** How to read what stands on a card. */
  public static void hints(Solved solved, List<CardReading> card, PageBuilder page) {
    Set<Hint> hints = new TreeSet<>(List.of(Hint.BANDS));
    if (solved.state().network().isPumped()) {
      hints.add(Hint.HANDS);
    }
    if (Cautions.hasOpenWater(solved.state().network())) {
      hints.add(Hint.OPEN_WATER);
    }
    if (solved.job().streams()) {
      hints.add(Hint.TOPPED_UP);
    }
    card.forEach(reading -> hints.addAll(ReadingWords.of(reading, Shown.of(solved)).hints()));
    hints.forEach(hint -> page.marked("- ", hint.sentence(Shown.of(solved).tools())));
  }
}
