package rillwright.cli.report.units;

import java.util.List;
import rillwright.curves.unit.Unit;

/**
 * How one kind of quantity is shown.
 *
 * @param unit its unit
 * @param figures how many figures are shown at most
 * @param leastStep the finest step, in that unit
 */
record Scale(Unit unit, int figures, String leastStep) {
  /** Of what is computed from catalogue losses and a published curve. */
  static final int COMPUTED = 3;

  /** Of what follows closely from what was measured. */
  static final int CLOSE = 3;

  /** Of what somebody wrote down: the rounding is not to be noticed. */
  static final int WRITTEN = 6;

  private static final String WRITTEN_STEP = "0.0001";

  /** The number without its unit. */
  String number(double si) {
    return Figures.of(unit.fromSi(si), figures, leastStep);
  }

  /** The number with its unit. */
  String with(double si) {
    return number(si) + " " + unit.symbol();
  }

  /** Parts of a sum with their unit; they add up to it as {@link #with} tells it. */
  List<String> parts(List<Double> si) {
    List<Double> numbers = si.stream().map(unit::fromSi).toList();
    return Figures.parts(numbers, figures, leastStep).stream()
        .map(number -> number + " " + unit.symbol())
        .toList();
  }

  /**
   * A number that somebody wrote down, with its unit: as it is written if it was written in this
   * unit, else to one figure more than what is computed.
   */
  String written(double si) {
    double number = unit.fromSi(si);
    return Figures.isShort(number, WRITTEN - 1)
        ? Figures.of(number, WRITTEN, WRITTEN_STEP) + " " + unit.symbol()
        : Figures.of(number, figures + 1, leastStep) + " " + unit.symbol();
  }

  /** Two numbers with the unit once: "0.7 to 1.1 in". */
  String between(double lowSi, double highSi) {
    return Decimals.range(number(lowSi), number(highSi)) + " " + unit.symbol();
  }
}
