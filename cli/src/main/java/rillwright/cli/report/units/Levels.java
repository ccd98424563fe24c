package rillwright.cli.report.units;

import rillwright.curves.unit.Unit;

/** Levels above the datum: all in one unit, because they are compared with each other. */
final class Levels {
  private static final int HUNDREDTHS = 100;
  private static final double NEARLY = 1e-6;
  private static final int DECIMALS_OF_DRAWINGS = 3;

  private Levels() {}

  /** From m: "-3.4 in", "86 in"; what was written to a hundredth keeps it. */
  static String inInches(double levelM) {
    double inches = Unit.INCH.fromSi(levelM);
    double hundredths = HUNDREDTHS * inches;
    boolean written = Math.abs(hundredths - Math.rint(hundredths)) < NEARLY;
    return Figures.ofStep(inches, written ? "0.01" : "0.1") + " " + Unit.INCH.symbol();
  }

  /** From m, with the decimals that drawings have: "0.350 m". */
  static String inMetres(double levelM) {
    return Figures.ofDecimals(levelM, DECIMALS_OF_DRAWINGS) + " " + Unit.METRE.symbol();
  }
}
