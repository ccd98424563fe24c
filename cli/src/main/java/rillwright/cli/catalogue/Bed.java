package rillwright.cli.catalogue;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A stream bed: by Manning n or by the size of its stones.
 *
 * @param name as project files name it: {@code cobble}
 * @param measure which of the two it is
 * @param least least n, or least D84, m
 * @param normal what is computed with: n, or D84, m
 * @param greatest greatest n, or greatest D84, m
 * @param about what it looks like
 * @param source where the numbers are from
 */
public record Bed(
    String name,
    Measure measure,
    double least,
    double normal,
    double greatest,
    String about,
    String source) {

  /** What the numbers of a bed are. */
  public enum Measure {
    MANNING_N,
    STONE_M
  }

  /** Manning n, s/m^⅓; empty if the bed is known by its stones. */
  public OptionalDouble manningN() {
    return normalIf(Measure.MANNING_N);
  }

  /** D84 of its stones, m; empty if the bed is known by Manning n. */
  public OptionalDouble stoneM() {
    return normalIf(Measure.STONE_M);
  }

  private OptionalDouble normalIf(Measure asked) {
    return measure == asked ? OptionalDouble.of(normal) : OptionalDouble.empty();
  }

  static Bed of(TableRow row) {
    boolean manning = row.text("law").equals("manning");
    ToDoubleFunction<String> cell = manning ? row::number : row::lengthM;
    return new Bed(
        row.text("name"),
        manning ? Measure.MANNING_N : Measure.STONE_M,
        cell.applyAsDouble("least"),
        cell.applyAsDouble("normal"),
        cell.applyAsDouble("greatest"),
        row.text("about").replace(";", ","),
        row.source());
  }
}
