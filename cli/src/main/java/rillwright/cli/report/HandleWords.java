package rillwright.cli.report;

import rillwright.solver.law.minor.ValveTravel;

/** Where a handle stands, for a crew that cannot set a loss coefficient. */
public final class HandleWords {
  private HandleWords() {}

  /** "a full-bore ball valve about 53° from open" for the K of something of another kind. */
  public static String ofBallValve(double lossCoefficient) {
    double open = ValveTravel.BALL.published().openingAt(lossCoefficient);
    double shown = Math.max(open, ValveTravel.BALL.leastPublishedOpening());
    return "a full-bore ball valve about "
        + Math.round(ValveTravel.degreesFromOpen(shown))
        + "° from open"
        + (open < shown ? " or more" : "");
  }
}
