package rillwright.cli.catalogue;

/**
 * Head lost in a unit such as a filter, a UV unit or a meter at the flow that its data sheet rates
 * it for: h (Q/Qr)^n.
 *
 * @param name what it is: {@code bead filter}
 * @param clean head lost when clean
 * @param dirty head lost when it is due for cleaning
 * @param exponent n, dimensionless
 * @param source where the numbers are from
 */
public record Device(String name, Head clean, Head dirty, double exponent, String source) {

  /**
   * A head as practice has it.
   *
   * @param leastM least that is usual, m
   * @param usualM in the middle of what is usual, m
   * @param greatestM greatest that is usual, m
   */
  public record Head(double leastM, double usualM, double greatestM) {}

  static Device of(TableRow row) {
    return new Device(
        row.text("name"),
        new Head(row.lengthM("least"), row.lengthM("clean"), row.lengthM("greatest")),
        new Head(row.lengthM("dirty least"), row.lengthM("dirty"), row.lengthM("dirty greatest")),
        row.number("exponent"),
        row.source());
  }
}
