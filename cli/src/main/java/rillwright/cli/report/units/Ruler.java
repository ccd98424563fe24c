package rillwright.cli.report.units;

import rillwright.curves.unit.Unit;

/** A ruler or tape, and how a depth is read off it. */
public enum Ruler {
  /** Inches in sixteenths: {@code 1-3/16 in}. */
  SIXTEENTHS(Unit.INCH, 16),
  /** Whole millimetres. */
  MILLIMETRES(Unit.MILLIMETRE, 1);

  private final Unit unit;
  private final int parts;

  Ruler(Unit unit, int parts) {
    this.unit = unit;
    this.parts = parts;
  }

  /** A depth, from m, with its unit. */
  public String with(double depthM) {
    return number(depthM) + " " + unit.symbol();
  }

  /** Two depths with the unit once. */
  public String between(double lowM, double highM) {
    return number(lowM) + " to " + with(highM);
  }

  /** A depth that may be less than the ruler's least mark: "6.7 in", "under 1/16 in". */
  public String measured(double depthM, ShownUnits units) {
    double least = unit.toSi(1.0 / parts);
    return depthM > 0 && depthM < least ? "under " + with(least) : units.depth(depthM);
  }

  private String number(double depthM) {
    long marks = Math.round(unit.fromSi(depthM) * parts);
    String sign = marks < 0 ? "-" : "";
    long whole = Math.abs(marks) / parts;
    long over = Math.abs(marks) % parts;
    if (over == 0) {
      return sign + whole;
    }
    long below = parts;
    while (over % 2 == 0) {
      over /= 2;
      below /= 2;
    }
    return sign + (whole == 0 ? "" : whole + "-") + over + "/" + below;
  }
}
