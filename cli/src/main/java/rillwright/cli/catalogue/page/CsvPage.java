package rillwright.cli.catalogue.page;

/** One section of the catalogue as comma-separated values: the fields of the JSON, in SI. */
public final class CsvPage {
  private CsvPage() {}

  /**
   * The lines of the one section that was asked.
   *
   * @throws IllegalArgumentException if the selection has more than one section
   */
  public static String of(Selection selection) {
    if (selection.sections().size() != 1) {
      throw new IllegalArgumentException("csv holds one table");
    }
    return String.join("\n", selection.sections().get(0).csvLines()) + "\n";
  }
}
