package rillwright.cli.report.text.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.compare.Compared;
import rillwright.cli.study.compare.Measured;
import rillwright.cli.study.compare.Measured.Kind;
import rillwright.curves.sheet.fact.Price;

/** Figures side by side, a table for each kind, with what differs marked. */
final class FiguresTables {
  private static final List<Kind> RUNNING = List.of(Kind.POWER, Kind.ENERGY, Kind.COST);
  private static final String NONE = "none";

  /** Shares below it are 0 % as they are shown. */
  private static final double HARDLY = 0.005;

  private final Compared compared;
  private final ShownUnits units;

  private FiguresTables(Compared compared) {
    this.compared = compared;
    this.units = Shown.of(compared);
  }

  static void print(Compared compared, PageBuilder page) {
    FiguresTables tables = new FiguresTables(compared);
    for (Kind kind : Kind.values()) {
      if (!RUNNING.contains(kind)) {
        tables.print(tables.heading(kind), List.of(kind), page);
      }
    }
    tables.print("RUNNING", RUNNING, page);
  }

  private void print(String heading, List<Kind> kinds, PageBuilder page) {
    TableBuilder table =
        new TableBuilder(heading)
            .column("A", Side.RIGHT)
            .column("B", Side.RIGHT)
            .column("B minus A", Side.RIGHT);
    for (Measured measured : compared.measured()) {
      if (kinds.contains(measured.figure())) {
        String name = measured.at().isEmpty() ? running(measured.figure()) : measured.at();
        table.row(
            name,
            List.of(
                Cell.of(shown(measured.figure(), measured.a())),
                Cell.of(shown(measured.figure(), measured.b())),
                difference(measured)));
      }
    }
    page.tableOfAny(table);
  }

  private String heading(Kind kind) {
    return switch (kind) {
      case FLOW_OUT -> "FLOW AT FALLS";
      case CREST_HEAD -> "OVER THE CREST";
      case PUMP_FLOW -> "PUMP FLOW";
      case PUMP_HEAD -> "PUMP HEAD";
      case PUMP_POWER -> "PUMP POWER";
      case LEVEL -> "LEVELS";
      case LINE_FLOW -> "FLOW IN LINES";
      case LINE_SPEED -> "SPEED IN LINES";
      case GAUGE_PRESSURE -> "PRESSURES";
      case POWER, ENERGY, COST -> "RUNNING";
    };
  }

  private static String running(Kind kind) {
    return kind == Kind.POWER
        ? "power"
        : kind == Kind.ENERGY ? "energy a year" : "electricity a year";
  }

  private String shown(Kind kind, OptionalDouble value) {
    return value.isPresent() ? shown(kind, value.getAsDouble()) : NONE;
  }

  private String shown(Kind kind, double value) {
    return switch (kind) {
      case FLOW_OUT, PUMP_FLOW, LINE_FLOW -> units.flow(value);
      case CREST_HEAD -> units.fineDepth(value);
      case PUMP_HEAD -> units.head(value);
      case LEVEL -> units.level(value);
      case LINE_SPEED -> units.velocity(value);
      case GAUGE_PRESSURE -> units.pressure(value);
      case PUMP_POWER, POWER -> units.power(value);
      case ENERGY -> units.amount(value) + " kWh";
      case COST -> units.amount(value) + " " + currency();
    };
  }

  private String currency() {
    return Stream.of(compared.a(), compared.b())
        .flatMap(side -> side.running().price().stream())
        .map(Price::currency)
        .findFirst()
        .orElse("");
  }

  /** What the second has more, with its sign, and as a share of the first. */
  private Cell difference(Measured measured) {
    if (!measured.differs()) {
      return Cell.of("same");
    }
    if (measured.change().isEmpty()) {
      return new Cell(measured.a().isPresent() ? "only in A" : "only in B", Tone.WARNING);
    }
    String first = shown(measured.figure(), measured.a());
    if (first.equals(shown(measured.figure(), measured.b()))) {
      return Cell.of("too little to show");
    }
    double change = measured.change().getAsDouble();
    String sign = change < 0 ? "-" : "+";
    String size = shown(measured.figure(), Math.abs(change));
    double whole = Math.abs(measured.a().getAsDouble());
    boolean asShare = measured.figure() != Kind.LEVEL && Math.abs(change) > HARDLY * whole;
    String share =
        asShare && whole > 0 ? " (" + sign + units.share(Math.abs(change) / whole) + ")" : "";
    return new Cell(sign + size + share, Tone.WARNING);
  }
}
