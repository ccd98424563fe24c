package rillwright.cli.catalogue;

import java.util.Locale;
import rillwright.solver.law.weir.BrinkRule;

/**
 * The lip of a fall: Q = C b h^1.5.
 *
 * @param name as project files name it: {@code stone}
 * @param coefficient C, m^½/s
 * @param brink how thick the sheet is at the brink
 * @param band by what share a depth may be off
 * @param source where the numbers are from
 */
public record Lip(String name, double coefficient, BrinkRule brink, double band, String source) {

  static Lip of(TableRow row) {
    return new Lip(
        row.text("name"),
        row.number("coefficient"),
        brink(row.text("brink")),
        row.share("band"),
        row.source());
  }

  private static BrinkRule brink(String words) {
    return BrinkRule.valueOf(words.replace(' ', '_').toUpperCase(Locale.ROOT));
  }
}
