package rillwright.cli.report;

import rillwright.solver.law.minor.ValveTravel;

/** Where a handle stands, for a crew that cannot set a loss coefficient. */
public final class HandleWords {
  private HandleWords() {}

  /** "a full-bore ball valve about 53° from open" for the K of something of another kind. */
  public static String ofBallValve(double lossCoefficient) {
    return "a full-bore ball valve about "
        + turned(lossCoefficient).replaceFirst("°", "° from open");
  }

  /** "53°", "60° or more": how far a full-bore ball valve of that K is turned. */
  public static String turned(double lossCoefficient) {
    double open = ValveTravel.BALL.published().openingAt(lossCoefficient);
    double shown = Math.max(open, ValveTravel.BALL.leastPublishedOpening());
    return Math.round(ValveTravel.degreesFromOpen(shown)) + "°" + (open < shown ? " or more" : "");
  }
}
