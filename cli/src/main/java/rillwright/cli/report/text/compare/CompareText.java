package rillwright.cli.report.text.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.compare.Compared;
import rillwright.cli.study.compare.Entered;
import rillwright.cli.study.compare.OnTarget;
import rillwright.cli.study.compare.OnTarget.Better;
import rillwright.cli.study.compare.OnTarget.Got;
import rillwright.cli.study.solve.Solved;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.wording.Listing;
import rillwright.solver.finding.Finding;

/** Two projects side by side on one page. */
public final class CompareText {
  private static final String NONE = "none";
  private static final int LONGEST_ADDRESS = 48;

  private final Compared compared;
  private final ShownUnits units;
  private final PageBuilder page;

  private CompareText(Compared compared) {
    this.compared = compared;
    this.units = Shown.of(compared);
    this.page = ChangedWords.page(title(compared), List.of());
  }

  private static String title(Compared compared) {
    String first = compared.a().title();
    String second = compared.b().title();
    return first.equals(second) ? first : "Two projects side by side";
  }

  /**
   * The page.
   *
   * @param a what the first project is called: a file's name
   * @param b what the second is called
   */
  public static Page of(Compared compared, String a, String b) {
    CompareText text = new CompareText(compared);
    text.page.space();
    text.page.marked("A  ", text.named(a, compared.a()));
    text.page.marked("B  ", text.named(b, compared.b()));
    text.body();
    return text.page.build();
  }

  private String named(String file, Solved solved) {
    return solved.title().equals(title(compared)) ? file : file + ": " + solved.title();
  }

  private void body() {
    if (compared.alike()) {
      page.space();
      page.paragraph("No differences.");
      return;
    }
    entered();
    targets();
    FiguresTables.print(compared, page);
    page.paragraph("Differences are taken before rounding.");
    electricity();
    findings("WARNINGS IN A ONLY", compared.onlyInA());
    findings("WARNINGS IN B ONLY", compared.onlyInB());
    int both = compared.a().findings().size() - compared.onlyInA().size();
    if (both > 0) {
      page.space();
      page.paragraph(
          both
              + (both == 1 ? " warning of both is" : " warnings of both are")
              + " not listed here; \"rillwright solve\" lists every one.");
    }
    page.space();
    SiteCautions.print(compared.b().state().network(), page);
  }

  private void entered() {
    TableBuilder table =
        new TableBuilder("IN THE FILES", LONGEST_ADDRESS)
            .column("A", Side.LEFT)
            .column("B", Side.LEFT);
    for (Entered entered : compared.entered()) {
      table.row(entered.address(), entered.a().orElse(NONE), entered.b().orElse(NONE));
    }
    if (table.isEmpty()) {
      page.heading("IN THE FILES");
      page.paragraph("The two say the same.");
    } else {
      page.table(table);
    }
    for (String pump : compared.sheets()) {
      page.marked("! ", "The data sheets of \"" + pump + "\" differ.");
    }
  }

  private void targets() {
    TableBuilder table =
        new TableBuilder("TARGETS")
            .column("target", Side.RIGHT)
            .column("A", Side.RIGHT)
            .column("B", Side.RIGHT)
            .column("better", Side.LEFT);
    for (OnTarget target : compared.targets()) {
      table.row(
          target.at(),
          List.of(
              Cell.of(targets(target)),
              share(target.a()),
              share(target.b()),
              Cell.of(better(target.better()))));
    }
    page.tableOfAny(table);
  }

  private String targets(OnTarget target) {
    Optional<String> a = target.a().map(it -> units.writtenFlow(it.targetM3PerS()));
    Optional<String> b = target.b().map(it -> units.writtenFlow(it.targetM3PerS()));
    return a.equals(b) ? a.orElse(NONE) : a.orElse("none") + ", " + b.orElse("none");
  }

  private Cell share(Optional<Got> got) {
    return got.map(
            it -> new Cell(units.share(it.fraction()), it.under() ? Tone.WARNING : Tone.GOOD))
        .orElse(Cell.of(NONE));
  }

  private static String better(Better better) {
    return switch (better) {
      case A -> "A";
      case B -> "B";
      case BOTH -> "both meet it";
      case NEITHER -> "alike, both miss it";
      case NOT_COMPARABLE -> "a target in one only";
    };
  }

  /** What one saves a year against the other. */
  private void electricity() {
    OptionalDouble a = compared.a().takes().costPerYear();
    OptionalDouble b = compared.b().takes().costPerYear();
    Optional<String> currency = compared.a().running().price().map(Price::currency);
    boolean comparable =
        a.isPresent()
            && b.isPresent()
            && currency.equals(compared.b().running().price().map(Price::currency));
    if (comparable && Math.abs(a.getAsDouble() - b.getAsDouble()) >= 0.5) {
      double saved = b.getAsDouble() - a.getAsDouble();
      page.paragraph(
          (saved > 0 ? "A" : "B")
              + " uses "
              + units.amount(Math.abs(saved))
              + " "
              + currency.orElse("")
              + " less electricity a year"
              + missedBy(saved > 0)
              + ".");
    }
  }

  /** What the cheaper one does not give, though the other does. */
  private String missedBy(boolean first) {
    List<String> missed =
        compared.targets().stream()
            .filter(target -> target.better() == (first ? Better.B : Better.A))
            .filter(target -> (first ? target.a() : target.b()).orElseThrow().under())
            .map(target -> "\"" + target.at() + "\"")
            .toList();
    return missed.isEmpty()
        ? ""
        : ", but misses the target" + (missed.size() == 1 ? "" : "s") + " of " + Listing.of(missed);
  }

  private void findings(String heading, List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    page.heading(heading);
    findings.forEach(it -> page.marked("! ", it.message(units)));
  }
}
