package rillwright.cli.study.mend.kind;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** The least of some steps that does, where each further one does too. */
final class LeastSteps {
  private LeastSteps() {}

  /**
   * The first step from {@code low} on that does; empty if the last does not.
   *
   * @param high the last that is tried, at least {@code low}
   */
  static OptionalInt find(int low, int high, IntPredicate does) {
    if (high < low || !does.test(high)) {
      return OptionalInt.empty();
    }
    int least = low;
    int known = high;
    while (least < known) {
      int middle = (least + known) / 2;
      if (does.test(middle)) {
        known = middle;
      } else {
        least = middle + 1;
      }
    }
    return OptionalInt.of(known);
  }

  /**
   * The last step from {@code low} on that does, where none further does; empty if the first does
   * not, or all do.
   */
  static OptionalInt last(int low, int high, IntPredicate does) {
    OptionalInt tooFar = find(low, high, does.negate());
    return tooFar.isPresent() && tooFar.getAsInt() > low
        ? OptionalInt.of(tooFar.getAsInt() - 1)
        : OptionalInt.empty();
  }
}
