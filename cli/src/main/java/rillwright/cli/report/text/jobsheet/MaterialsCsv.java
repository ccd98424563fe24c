package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.curves.wording.PlainText;

/**
 * Materials for a spreadsheet (RFC 4180): what, material, size, net length, stock lengths to buy,
 * count, price; then the total of what has a price, its currency beside it. What a spreadsheet
 * would take for a formula gets an apostrophe in front.
 */
public final class MaterialsCsv {
  private static final String HEADINGS = "what,material,size,length,stock,count,total price";
  private static final String FORMULA = "=+-@";

  private MaterialsCsv() {}

  /** The file's text. */
  public static String of(Materials materials, ShownUnits units) {
    StringBuilder csv = new StringBuilder(HEADINGS).append('\n');
    for (Item item : materials.items()) {
      MaterialWords words = MaterialWords.of(item, units);
      row(
          csv,
          List.of(
              words.what(),
              words.material(),
              words.size(),
              words.length(),
              words.stock(),
              words.count(),
              words.price()));
    }
    if (materials.total().isPresent()) {
      String total = MaterialWords.totalOf(materials);
      String currency = materials.currency().map(it -> ", " + it).orElse("");
      String amount = MaterialWords.money(materials.total().getAsDouble());
      row(csv, List.of(total + currency, "", "", "", "", "", amount));
    }
    return csv.toString();
  }

  private static void row(StringBuilder csv, List<String> cells) {
    csv.append(cells.stream().map(MaterialsCsv::cell).collect(Collectors.joining(",")))
        .append('\n');
  }

  private static String cell(String text) {
    String plain = PlainText.harmless(text);
    String safe = !plain.isEmpty() && FORMULA.indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
    return safe.matches("[^\",]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
  }
}
