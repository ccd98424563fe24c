package rillwright.cli.report.text.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.sheet.MeterCurrent;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.curves.sheet.fact.Nameplate;

/** What a watt meter and a clamp meter should read. */
final class MeterWords {
  private static final String CLAMP =
      "A clamp meter goes round one conductor, not the whole cord. Opening a cord or an enclosure"
          + " for it is for a qualified electrician, licensed where the law requires it.";

  private final ShownUnits units;
  private final PageBuilder page;

  MeterWords(ShownUnits units, PageBuilder page) {
    this.units = units;
    this.page = page;
  }

  void print(SheetFigures figures) {
    if (figures.ratedPowerW().isEmpty()) {
      page.paragraph(
          "Not known: the sheet gives no power. Write a column \"power [W]\", or a line"
              + " \"# rated power:\" with its watts.");
      return;
    }
    page.table(table(figures));
    Nameplate plate = figures.plate();
    if (plate.voltageV().isEmpty()) {
      page.paragraph(
          "For amps the voltage is missing: write \"# voltage: 115 V\" in the sheet, or give"
              + " --volts.");
      return;
    }
    page.paragraph(supply(plate) + " " + CLAMP);
  }

  private TableBuilder table(SheetFigures figures) {
    boolean amps = figures.plate().voltageV().isPresent();
    TableBuilder table = new TableBuilder("WHERE").column("watts", Side.RIGHT);
    if (amps) {
      table.column("amps", Side.RIGHT);
    }
    row(table, "as rated", figures, figures.plate().ratedPowerW());
    row(table, "at shut-off", figures, figures.curve().powerAt(0));
    figures.best().ifPresent(best -> row(table, "at best efficiency", figures, best.powerW()));
    row(table, "most on its curve", figures, figures.set().publishedLargestPowerW());
    return table;
  }

  private void row(TableBuilder table, String name, SheetFigures figures, OptionalDouble power) {
    if (power.isEmpty()) {
      return;
    }
    String watts = units.power(power.getAsDouble());
    Optional<MeterCurrent> current = figures.currentAt(power);
    if (current.isPresent()) {
      table.row(name, watts, amps(current.get()));
    } else {
      table.row(name, watts);
    }
  }

  private static String amps(MeterCurrent current) {
    String least = tenth(current.leastA());
    String greatest = tenth(current.greatestA());
    return (least.equals(greatest) ? least : least + " to " + greatest) + " A";
  }

  private static String tenth(double amperes) {
    return String.format(Locale.ROOT, "%.1f", amperes);
  }

  private String supply(Nameplate plate) {
    String on =
        "On "
            + units.number(plate.voltageV().getAsDouble())
            + " V"
            + (plate.phases() > 1 ? " between lines, three phases, " : ", one phase, ");
    return plate.powerFactor().isPresent()
        ? on
            + "with the power factor "
            + units.number(plate.powerFactor().getAsDouble())
            + " of the sheet."
        : on
            + "with a power factor of "
            + units.number(MeterCurrent.USUAL_LEAST_POWER_FACTOR)
            + " to 1, because the sheet gives none (common practice; the nameplate's is better).";
  }
}
