package rillwright.cli.catalogue;

/**
 * Loss at a pipe's end in open water, on the velocity head there.
 *
 * @param name what the end is like: {@code entrance bell}
 * @param lossCoefficient K, dimensionless
 * @param least least K that is published or usual
 * @param greatest greatest K that is published or usual
 * @param source where the numbers are from
 */
public record PipeEnd(
    String name, double lossCoefficient, double least, double greatest, String source) {

  static PipeEnd of(TableRow row) {
    return new PipeEnd(
        row.text("end"),
        row.number("k"),
        row.number("least"),
        row.number("greatest"),
        row.source());
  }
}
