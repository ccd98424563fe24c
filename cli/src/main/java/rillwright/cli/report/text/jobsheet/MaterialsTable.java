package rillwright.cli.report.text.jobsheet;

import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Item.Kind;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.cli.study.jobsheet.materials.Stock;

/** What the job is built of. */
final class MaterialsTable {
  private static final String NONE = "?";

  private MaterialsTable() {}

  static void print(Materials materials, ShownUnits units, PageBuilder page) {
    boolean priced = materials.total().isPresent();
    TableBuilder table =
        new TableBuilder("MATERIALS")
            .column("material", Side.LEFT)
            .column("size", Side.LEFT)
            .column("net length", Side.RIGHT)
            .column("count", Side.RIGHT)
            .column("buy", Side.LEFT);
    if (priced) {
      table.column(materials.currency().orElse("price"), Side.RIGHT);
    }
    for (Item item : materials.items()) {
      MaterialWords words = MaterialWords.of(item, units);
      if (priced) {
        table.row(
            words.what(),
            words.material(),
            words.size(),
            words.length(),
            words.count(),
            words.stock(),
            words.price().isEmpty() ? NONE : words.price());
      } else {
        table.row(
            words.what(),
            words.material(),
            words.size(),
            words.length(),
            words.count(),
            words.stock());
      }
    }
    if (table.isEmpty()) {
      return;
    }
    if (priced) {
      String total = MaterialWords.money(materials.total().getAsDouble());
      table.row(MaterialWords.totalOf(materials), "", "", "", "", "", total);
    }
    page.table(table);
    notes(materials, units, priced, page);
  }

  private static void notes(
      Materials materials, ShownUnits units, boolean priced, PageBuilder page) {
    boolean joints =
        materials.items().stream()
            .map(item -> item.what().kind())
            .anyMatch(kind -> kind == Kind.UNION || kind == Kind.BULKHEAD_FITTING);
    boolean byLoss =
        materials.items().stream().anyMatch(it -> it.what().lossCoefficient().isPresent());
    page.paragraph(
        "Pipe to buy: the net length and "
            + units.share(Stock.CUTTING_ALLOWANCE)
            + " for cuts, in whole lengths or coils as they are usually sold (common practice)."
            + (joints
                ? " Unions beside what may have to be lifted out, and bulkhead fittings where a"
                    + " pipe passes a wall, are counted where the file does not name them (common"
                    + " practice)."
                : "")
            + (byLoss
                ? " A fitting with a K, its loss coefficient, has no type in the file; write its"
                    + " type."
                : "")
            + (priced ? " \"?\" has no price in the file." : "")
            + " Not listed: chambers, valve boxes, sleeves, gauges, liner, stone, primer and"
            + " cement.");
  }
}
