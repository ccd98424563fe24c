package rillwright.cli.file.field;

import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.quantity.WrittenUnit;
import rillwright.cli.file.tree.Scalar;
import rillwright.solver.study.uncertainty.Distribution;

/**
 * A quantity of the file that is not known exactly.
 *
 * @param what which one, for a person: {@code line "supply": run}
 * @param written the piece of the file that says it
 * @param quantity its middle and spread, in base units
 * @param range what is valid
 * @param measure what it measures
 */
public record Uncertain(
    String what, Scalar written, Quantity quantity, Range range, Measure measure) {

  /** What is known of it, cut off at what is valid. */
  public Distribution distribution() {
    return quantity.spread().about(quantity.middle(), range).orElseThrow();
  }

  /** The unit in which it is written. */
  public WrittenUnit unit() {
    return WrittenUnit.of(written.text(), measure);
  }
}
