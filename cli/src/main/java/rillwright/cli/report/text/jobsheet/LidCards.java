package rillwright.cli.report.text.jobsheet;

import java.util.List;
import rillwright.cli.report.page.Handle;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Paper;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.text.visit.ReadingWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.card.Card;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.jobsheet.card.CardReading.Level;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;

/** Cards for the pump's lid and the valve box, of A6 size: what stands how, and what is usual. */
final class LidCards {
  private final SheetAnswer answer;
  private final ShownUnits units;
  private final PageBuilder page;
  private boolean begun;

  private LidCards(SheetAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.page = new PageBuilder(answer.title());
  }

  static Page of(SheetAnswer answer) {
    LidCards cards = new LidCards(answer);
    cards.page.show(new Head.Facts(SheetHead.facts(answer.papers().details())));
    cards.pumps();
    cards.valves();
    return cards.page.build().as(Paper.CARD, "Keep this card by the pump or the valve");
  }

  /** The first card stands on the first sheet. */
  private void card(String heading) {
    if (begun) {
      page.newSheet(heading);
    } else {
      page.heading(heading);
      begun = true;
    }
  }

  private void pumps() {
    if (!Cautions.isPumped(answer.network())) {
      return;
    }
    card("PUMP LID");
    answer.network().placed(Pump.class).stream()
        .map(pump -> pump.line().name().value() + ": " + pump.part().label())
        .forEach(page::paragraph);
    answer.asSet().stream()
        .flatMap(set -> Card.underTheLid(set.solved()).stream())
        .map(this::usual)
        .forEach(page::paragraph);
    page.marked(
        "! ",
        "Switch off and unplug before hands go in. Wiring is for a qualified electrician, licensed"
            + " where the law requires it. Put the lid back: water drowns small children.");
  }

  private String usual(CardReading reading) {
    ReadingWords words = ReadingWords.of(reading, units);
    String usual = reading.at() + ": " + words.what() + ": usually " + words.between();
    return reading.what() instanceof Level level && !level.above()
        ? usual + "; more: clean the net."
        : usual + ".";
  }

  private void valves() {
    Network set = answer.asSet().map(it -> it.solved().state().network()).orElse(answer.network());
    List<Handle> handles =
        ValveBlocks.handles(set, units).stream()
            .map(it -> new Handle(it.valve(), it.degreesFromOpen(), it.words() + ", leave it"))
            .toList();
    if (handles.isEmpty()) {
      if (!begun) {
        card("VALVE BOX");
        page.paragraph("No valve of this job has a setting to keep.");
      }
      return;
    }
    card("VALVE BOX");
    page.show(new Head.Handles(handles));
  }
}
