package rillwright.cli.report.text.asbuilt;

import java.util.EnumSet;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.file.quantity.WrittenUnit;
import rillwright.cli.report.odds.UnknownWords;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.Chance;
import rillwright.cli.report.weak.LeftOutWords;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Compared;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.FallFlow;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Narrowing;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.cli.study.asbuilt.LearntPump;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** What readings say of what was not known exactly, on one page. */
public final class AsbuiltText {
  private static final int LONGEST_ADDRESS = 40;

  private final AsbuiltAnswer answer;
  private final ShownUnits units;
  private final ReadingWords words;
  private final PageBuilder page;

  private AsbuiltText(AsbuiltAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.words = new ReadingWords(units);
    this.page = ChangedWords.page(answer.title(), answer.changes());
  }

  /** The page. */
  public static Page of(AsbuiltAnswer answer) {
    return new AsbuiltText(answer).print();
  }

  private Page print() {
    page.paragraph(headline());
    page.table(quantities());
    page.paragraph(
        "Low (5 %), median, high (95 %): it is less in 5, 50 and 95 % of what is likely. \"Before\""
            + " is what the file says; \"as before\": the readings say nothing of it."
            + (answer.pumps().isEmpty() ? "" : " Bend: 1 is a straight line."));
    answer.quantities().stream()
        .filter(quantity -> !quantity.chances().isEmpty())
        .forEach(quantity -> page.table(sizes(quantity)));
    if (answer.quantities().stream().anyMatch(quantity -> !quantity.chances().isEmpty())) {
      page.paragraph(
          "Chances are among these sizes, if all else in the file and the readings is right.");
    }
    answer.pumps().forEach(pump -> page.table(pump(pump)));
    page.table(falls());
    page.table(readings());
    page.paragraph(
        "Within: the error as written, or as usual; of a bucket with 0.2 s of its watch."
            + " Deviations: how far off a reading is, in standard deviations: half of \"within\""
            + " and, for the model, 1 % of what the middle of the ranges gives (root of the sum of"
            + " squares); 2 is usual at times, 3 is not.");
    next();
    page.heading("NOTES");
    notes();
    return page.build();
  }

  private String headline() {
    long learnt = answer.quantities().stream().filter(Quantity::isLearnt).count();
    int all = answer.quantities().size();
    int read = answer.readings().size();
    String counted = read == 1 ? "1 reading" : read + " readings";
    if (!answer.fits()) {
      return counted
          + " disagree with all that the ranges allow: do not build on this answer before they are"
          + " explained (see below).";
    }
    if (read == 0) {
      return "Nothing was read, so nothing is learnt: this is what the file says.";
    }
    return counted
        + " narrow "
        + (learnt == 0 ? "none of the" : learnt == all ? "all" : learnt + " of " + all)
        + " uncertain values, assuming that nothing is wrong.";
  }

  private TableBuilder quantities() {
    TableBuilder table =
        new TableBuilder("AS BUILT", LONGEST_ADDRESS)
            .column("before", Side.LEFT)
            .column("low (5 %)", Side.RIGHT)
            .column("median", Side.RIGHT)
            .column("high (95 %)", Side.RIGHT);
    for (Quantity quantity : answer.quantities()) {
      String name = name(quantity);
      String written = quantity.named().quantity().written().text();
      if (!quantity.chances().isEmpty()) {
        table.row(name, written, "", "see its sizes", "");
      } else if (quantity.isLearnt()) {
        WrittenUnit unit = quantity.named().quantity().unit();
        Band now = quantity.posterior();
        double matters = now.width() / 2;
        table.row(
            name,
            written,
            unit.value(now.p5(), matters),
            unit.value(now.p50(), matters),
            unit.value(now.p95(), matters));
      } else {
        table.row(name, written, "", "as before", "");
      }
    }
    return table;
  }

  private static String name(Quantity quantity) {
    return UnknownWords.of(quantity.named().quantity().what());
  }

  private TableBuilder sizes(Quantity quantity) {
    TableBuilder table =
        new TableBuilder("SIZE of " + UnknownWords.partOf(quantity.named().quantity().what()))
            .column("before", Side.RIGHT)
            .column("now", Side.RIGHT);
    quantity
        .chances()
        .forEach(it -> table.row(it.size(), Chance.words(it.before()), Chance.words(it.after())));
    return table;
  }

  private TableBuilder pump(LearntPump pump) {
    TableBuilder table =
        new TableBuilder("PUMP " + pump.name())
            .column("head, low (5 %)", Side.RIGHT)
            .column("median", Side.RIGHT)
            .column("high (95 %)", Side.RIGHT);
    for (LearntPump.Point point : pump.points()) {
      table.row(
          "at " + units.writtenFlow(point.flowM3PerS()),
          units.head(point.headM().p5()),
          units.head(point.headM().p50()),
          units.head(point.headM().p95()));
    }
    return table;
  }

  private TableBuilder falls() {
    TableBuilder table =
        new TableBuilder("FLOW")
            .column("target", Side.RIGHT)
            .column("before", Side.RIGHT)
            .column("low (5 %)", Side.RIGHT)
            .column("median", Side.RIGHT)
            .column("high (95 %)", Side.RIGHT);
    for (FallFlow fall : answer.falls()) {
      OptionalDouble target = answer.network().point(fall.name()).targetM3PerS();
      table.row(
          fall.name().value(),
          target.isPresent() ? units.writtenFlow(target.getAsDouble()) : "none",
          units.flow(fall.before().p5()) + " to " + units.flow(fall.before().p95()),
          units.flow(fall.after().p5()),
          units.flow(fall.after().p50()),
          units.flow(fall.after().p95()));
    }
    return table;
  }

  private TableBuilder readings() {
    TableBuilder table =
        new TableBuilder("READ")
            .column("read", Side.RIGHT)
            .column("within", Side.RIGHT)
            .column("expected", Side.RIGHT)
            .column("deviations", Side.RIGHT);
    for (Compared one : answer.readings()) {
      table.row(
          words.opening(one.reading().what()),
          words.value(one.reading().what(), one.reading().value()),
          words.within(one.reading().what(), one.reading().tolerance()),
          words.expected(one.reading().what(), one.expected()),
          one.deviations().isPresent()
              ? String.format(Locale.ROOT, "%+.1f", one.deviations().getAsDouble())
                  + (one.isOff() ? " !" : "")
              : "");
    }
    return table;
  }

  private void next() {
    if (answer.next().isEmpty()) {
      page.heading("READ NEXT");
      page.paragraph("No further reading would narrow the range of a flow by more than 5 %.");
      return;
    }
    TableBuilder table =
        new TableBuilder("READ NEXT")
            .column("", Side.LEFT)
            .column("work", Side.RIGHT)
            .column("range of each flow left", Side.LEFT);
    Set<Risk> risks = EnumSet.noneOf(Risk.class);
    for (int i = 0; i < answer.next().size(); i++) {
      Narrowing one = answer.next().get(i);
      Risk risk = one.what().effort().risk();
      risks.add(risk);
      table.row(
          (i + 1) + RiskWords.of(risk, answer.network().isPumped()).mark(),
          words.opening(one.what()),
          one.what().effort().minutes() + " min",
          one.left().entrySet().stream()
              .map(left -> left.getKey().value() + " " + units.share(left.getValue()))
              .collect(Collectors.joining(", ")));
    }
    page.table(table);
    page.paragraph(
        "Range left: what would be left of the spread from low to high of each flow above.");
    for (Risk risk : risks) {
      RiskWords caution = RiskWords.of(risk, answer.network().isPumped());
      if (!caution.mark().isEmpty()) {
        page.marked(caution.mark() + " ", caution.sentence());
      }
    }
  }

  private void notes() {
    if (!answer.fits()) {
      page.marked(
          "! ",
          "The readings are further from all that is possible than one job in a thousand would be."
              + " Read again what is marked \"!\", look whether a range is too narrow, or run"
              + " \"rillwright weak\": something may be wrong.");
    }
    if (answer.readings().stream().anyMatch(one -> one.expected().isEmpty())) {
      page.marked(
          "! ",
          "\"No reading\": the place is cut off on both sides, nothing holds the water there, or"
              + " the pump's data sheet has no power. Such readings do not count.");
    }
    if (!answer.leftOut().isEmpty()) {
      for (Reading one : answer.leftOut()) {
        page.marked(
            "", "Left out: " + words.name(one.what()) + ": " + LeftOutWords.why(one.what()) + ".");
      }
      page.marked("", "\"rillwright weak\" weighs what is left out here.");
    }
    page.marked(
        "",
        "What is learnt of one value depends on the others. A new project file states each by"
            + " itself, so \"rillwright odds\" of it shows a wider range of flows; keep the"
            + " readings.");
  }
}
