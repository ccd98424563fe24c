package rillwright.cli.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import rillwright.solver.law.Bore;

/**
 * Friction factor of fully rough flow in a size of pipe: resistance coefficients of fittings are
 * multiples of it, K = n f_T.
 *
 * @param size the size for which it holds
 * @param bore that size's bore
 * @param factor f_T, dimensionless
 */
record RoughFriction(String size, Bore bore, double factor) {
  private static final String MULTIPLE = " fT";

  static RoughFriction of(TableRow row) {
    return new RoughFriction(row.text("size"), new Bore(row.lengthM("bore")), row.number("factor"));
  }

  /** What a row says of a loss: for which size, its bore, and K there. */
  record SizedLoss(String size, Optional<Bore> bore, double lossCoefficient) {}

  /** A row as it is, or of one that gives K as a multiple of f_T one for each size. */
  static <T> Stream<T> expand(
      TableRow row, List<RoughFriction> sizes, BiFunction<TableRow, SizedLoss, T> maker) {
    String k = row.text("k");
    if (!k.endsWith(MULTIPLE)) {
      return Stream.of(
          maker.apply(
              row,
              new SizedLoss(
                  row.text("size"), row.lengthIfAnyM("bore").map(Bore::new), row.number("k"))));
    }
    double multiple = Double.parseDouble(k.substring(0, k.length() - MULTIPLE.length()));
    return sizes.stream()
        .map(
            it ->
                maker.apply(
                    row,
                    new SizedLoss(it.size, Optional.of(it.bore), rounded(multiple * it.factor))));
  }

  /** Without what binary numbers add after the printed digits. */
  private static double rounded(double k) {
    return Math.round(k * 1e4) / 1e4;
  }
}
