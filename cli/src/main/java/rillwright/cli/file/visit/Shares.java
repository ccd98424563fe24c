package rillwright.cli.file.visit;

import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;

/** Finds by its unit what a tolerance is a tolerance of. */
final class Shares {
  private Shares() {}

  static boolean isShare(String text) {
    return is(text, Measure.SHARE);
  }

  static boolean isTime(String text) {
    return is(text, Measure.TIME);
  }

  private static boolean is(String text, Measure measure) {
    try {
      QuantityReader.read(text, measure, Range.ANY);
      return true;
    } catch (NotAQuantity other) {
      return false;
    }
  }
}
