package rillwright.cli.report;

import rillwright.solver.law.minor.ValveTravel;

/** Where a handle stands, for a crew that cannot set a loss coefficient. */
public final class HandleWords {
  private HandleWords() {}

  /** "a full-bore ball valve about 53° from open" for the K of something of another kind. */
  public static String ofBallValve(double lossCoefficient) {
    return "a full-bore ball valve about " + turned(lossCoefficient);
  }

  /** "53° from open", "wide open": where the handle of a quarter-turn valve stands. */
  public static String at(double degreesFromOpen) {
    long whole = Math.round(degreesFromOpen);
    return whole == 0 ? "wide open" : whole + "° from open";
  }

  /** "53° from open", "60° from open or more": how far a full-bore ball valve of that K is. */
  public static String turned(double lossCoefficient) {
    double open = ValveTravel.BALL.published().openingAt(lossCoefficient);
    double shown = Math.max(open, ValveTravel.BALL.leastPublishedOpening());
    return at(ValveTravel.degreesFromOpen(shown)) + (open < shown ? " or more" : "");
  }
}
