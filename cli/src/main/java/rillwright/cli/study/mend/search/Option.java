package rillwright.cli.study.mend.search;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.study.mend.change.Step;

/**
 * What one line or one pump may become.
 *
 * @param steps none to leave it as it is
 * @param price of what is bought; empty if it is not known
 * @param effort a number to compare by where prices are missing: metres of new pipe, a pump counted
 *     as some
 */
record Option(List<Step> steps, OptionalDouble price, double effort) {
  Option {
    steps = List.copyOf(steps);
  }

  /** Left as it is. */
  static final Option NOTHING = new Option(List.of(), OptionalDouble.of(0), 0);
}
