package rillwright.cli.catalogue.page;

import java.io.PrintWriter;

/** One section of the catalogue as comma-separated values: the fields of the JSON, in SI. */
public final class CsvPage {
  private CsvPage() {}

  /**
   * Prints the one section that was asked.
   *
   * @throws IllegalArgumentException if the selection has more than one section
   */
  public static void print(Selection selection, PrintWriter out) {
    if (selection.sections().size() != 1) {
      throw new IllegalArgumentException("csv holds one table");
    }
    selection.sections().get(0).csvLines().forEach(out::println);
  }
}
