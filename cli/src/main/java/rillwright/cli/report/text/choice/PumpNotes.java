package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Locale;
import rillwright.cli.report.Effort;
import rillwright.cli.report.PumpsAnswer;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.wording.PlainText;
import rillwright.solver.trial.RatedTrial;

/** What to know about a ranking of pumps. */
final class PumpNotes {
  private PumpNotes() {}

  /** What to say where no pump does it. */
  static String noneDoes(PumpsAnswer answer) {
    ShownUnits units = answer.duty().units();
    return answer
        .duty()
        .duty()
        .greatestFlowM3PerS()
        .map(
            greatest ->
                "No pump can do it here: no more than "
                    + units.flow(greatest)
                    + " could be drawn or delivered. Look at what the skimmer passes at this level of"
                    + " the pond, at the intake's level, and at shut valves.")
        .orElse(
            "None of these pumps does it. Look for one whose curve passes through what the pump must"
                + " make, or change what the last column says.");
  }

  static void print(PumpsAnswer answer, List<RatedTrial> does, Page page) {
    cost(answer, does, page);
    page.paragraph(
        "Flows and watts are those with the valves as they stand, except \"draws\", \"a year\" and the"
            + " cost of a pump that is throttled: those are at the throttled point. \"Of best\" is the"
            + " flow against that of the best efficiency; 70 to 120 % is a good place (common"
            + " practice).");
    answer.faults().forEach(fault -> page.marked("! ", "Not tried: " + fault));
    for (String model : answer.choice().leftOut()) {
      page.marked("! ", "Not tried: with " + PlainText.quoted(model) + " there is no balance.");
    }
    if (!does.isEmpty()) {
      page.paragraph(
          "Wiring for a pump by water is for a licensed electrician, protected by GFCI or RCD; unplug"
              + " before hands go in. Local codes decide.");
    }
    effort(answer.effort(), page);
  }

  private static void cost(PumpsAnswer answer, List<RatedTrial> does, Page page) {
    ShownUnits units = answer.duty().units();
    if (answer.terms().pricePerKwh().isEmpty()) {
      page.paragraph(
          "No price of electricity is known, so pumps are ranked by energy; write for example"
              + " \"running: {price: 0.17 USD/kWh, hours: 24 h/day, days: 210 days/year}\".");
    } else {
      page.paragraph(
          "Electricity is counted for "
              + String.format(Locale.ROOT, "%,d", Math.round(answer.terms().hoursPerYear()))
              + " hours a year at "
              + units.number(answer.terms().pricePerKwh().getAsDouble())
              + " "
              + answer.currency().orElse("")
              + "/kWh.");
    }
    long unpriced = does.stream().filter(r -> r.trial().setup().price().isEmpty()).count();
    if (unpriced > 0) {
      page.paragraph(
          "Where a data sheet has no price (\"# price: 389 USD\"), the cost is of electricity alone:"
              + " ask for the price before comparing.");
    }
    if (!answer.otherCurrencies().isEmpty()) {
      page.paragraph(
          "Prices in another currency than "
              + answer.currency().orElse("the file's")
              + " do not count: "
              + String.join(", ", answer.otherCurrencies())
              + ".");
    }
  }

  private static void effort(Effort effort, Page page) {
    if (effort.isWorthTelling()) {
      page.paragraph(
          "Balanced the network "
              + effort.solves()
              + " times, "
              + Math.round(effort.solvesPerSecond())
              + " times a second.");
    }
  }
}
