package rillwright.cli.report.weak;

import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/**
 * What to mind while something is read.
 *
 * @param mark that stands beside the reading; empty where there is nothing to mind
 * @param sentence what to mind
 */
public record RiskWords(String mark, String sentence) {
  /** How the depth of running water is read. */
  public static final String FROM_THE_EDGE =
      "Read with a ruler or staff from the edge, hands out of the water while the pump runs";

  /** What a sign of trouble with electricity or heat asks for before anything is read. */
  public static final String TRIPS =
      "A breaker or ground-fault protection (GFCI or RCD) that trips: leave it off, keep out of the"
          + " water, and call a qualified electrician, licensed where the law requires it; never"
          + " defeat it. A hot pump: switch it off and let it cool before anyone touches it.";

  /**
   * The words for a risk.
   *
   * @param isPumped whether there is a pump in the job, and so a supply to be isolated
   */
  public static RiskWords of(Risk risk, boolean isPumped) {
    return switch (risk) {
      case NONE -> new RiskWords("", "");
      case SHUT_OFF ->
          new RiskWords(
              "*",
              "Valve shut: ten seconds at most, never with soft hose in the line (glued flexible"
                  + " PVC"
                  + " counts as pipe), never with a positive-displacement pump; open it slowly.");
      case ELECTRICITY ->
          new RiskWords(
              "+",
              "Electricity by water: a plug-in meter that stays dry, protected against ground"
                  + " faults (GFCI or RCD);"
                  + " anything at the wiring is for a qualified electrician, licensed where the law"
                  + " requires it.");
      case OPEN_WATER ->
          new RiskWords(
              "~",
              (isPumped ? FROM_THE_EDGE : "Read with a ruler or staff from the edge")
                  + "; open water drowns small children.");
      case PUMP_OFF ->
          new RiskWords(
              "o",
              "Pump off: read once the water stands still; see that the pond has room for what"
                  + " comes back down.");
      case HELD_SHUT ->
          new RiskWords(
              "^",
              "Drawdown: with the mouth shut by a valve or a board, never a hand, time how fast the"
                  + " level drops; a few seconds, open again well above the intake. Hands, hair and"
                  + " clothes stay clear of mouth and suction; open water drowns small children.");
      case OPENED ->
          new RiskWords(
              "x",
              "Opened part: "
                  + (isPumped ? "pump and lamp off and unplugged" : "line shut and lamp unplugged")
                  + ", pressure let off before a lid or union is opened; a lamp's light harms the"
                  + " eyes.");
      case METER_PLACE ->
          new RiskWords(
              "#",
              "Clamp-on meter: on stiff pipe that runs full, about ten bores of straight pipe"
                  + " upstream and five downstream, from dry ground.");
    };
  }
}
