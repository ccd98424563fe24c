package rillwright.cli.report.units;

import rillwright.curves.unit.Unit;

/**
 * How one kind of quantity is shown.
 *
 * @param unit its unit
 * @param share by which rounding may move it at most
 * @param leastStep the finest step, in that unit
 */
record Scale(Unit unit, double share, String leastStep) {
  /** Of what is computed from catalogue losses and a published curve: it is not known better. */
  static final double COMPUTED = 0.025;

  /** Of what follows closely from what was measured. */
  static final double CLOSE = 0.01;

  /** Of what need not be exact. */
  static final double ROUGHLY = 0.1;

  /** Of what somebody wrote down: the rounding is not to be noticed. */
  static final double WRITTEN = 0.0001;

  /** The number without its unit. */
  String number(double si) {
    return Figures.of(unit.fromSi(si), share, leastStep);
  }

  /** The number with its unit. */
  String with(double si) {
    return number(si) + " " + unit.symbol();
  }

  /** Two numbers with the unit once: "0.7 to 1.1 in". */
  String between(double lowSi, double highSi) {
    return number(lowSi) + " to " + with(highSi);
  }
}
