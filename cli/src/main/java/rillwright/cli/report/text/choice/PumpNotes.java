package rillwright.cli.report.text.choice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.OtherKinds;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.solver.trial.RatedTrial;

/** Notes on a ranking of pumps. */
final class PumpNotes {
  /** What to say where no pump meets the targets. */
  static final String NONE_DOES =
      "None of these pumps meets the targets. Look for one whose curve passes through the duty"
          + " point, or make a change of the last column.";

  /** What to say where no pump could do it. */
  static final String NO_PUMP_WOULD =
      "No pump can meet the targets: too little water can pass upstream or downstream of it. Check"
          + " what is shut or clogged, and what the skimmer passes (\"rillwright solve\" lists what"
          + " is shut).";

  /** What to do where none is needed. */
  static final String THROTTLE =
      "Throttle the falls that get too much: run \"rillwright balance\" for the openings of their"
          + " valves.";

  /** Less than this share of the watts is noticeably less. */
  private static final double SAVING = 0.97;

  private PumpNotes() {}

  /**
   * What belongs right below the table of those that do it.
   *
   * @param accepts whether one of them is a little under a target
   */
  static void besideTheTable(
      PumpsAnswer answer, List<RatedTrial> does, boolean accepts, PageBuilder page) {
    if (does.stream().anyMatch(rated -> rated.trial().verdict().throttled().isPresent())) {
      page.paragraph(CostNotes.THROTTLED);
    }
    if (accepts) {
      page.paragraph(
          "Up to 5 % under target counts as met (common practice). \"rillwright mend\" asks the"
              + " whole target of a change.");
    }
    CostNotes costs = new CostNotes(page, Shown.of(answer), answer.currency());
    costs.speeds(
        does.stream().map(rated -> rated.trial().setup()), answer.conditions().isPresent());
    otherKinds(answer, does, page);
    if (does.stream().anyMatch(rated -> rated.trial().setup().price().isEmpty())) {
      boolean marked = does.stream().anyMatch(rated -> rated.unknownCost() == 0);
      boolean several = does.stream().anyMatch(rated -> rated.trial().setup().count() > 1);
      costs.unpricedPumps(marked, several);
    }
  }

  /** What is built otherwise for pumps that stand beside the water and not in it, or in it. */
  private static void otherKinds(PumpsAnswer answer, List<RatedTrial> does, PageBuilder page) {
    Set<String> models =
        does.stream().map(it -> it.trial().setup().offer().model()).collect(Collectors.toSet());
    answer
        .otherKinds()
        .ifPresent(
            other -> {
              List<String> shown = other.models().stream().filter(models::contains).toList();
              if (!shown.isEmpty()) {
                page.paragraph(otherKind(other, String.join(", ", shown)));
              }
            });
  }

  private static String otherKind(OtherKinds other, String shown) {
    return other.isPresentSubmersible()
        ? "External, while "
            + other.present()
            + " in the file is submersible: "
            + shown
            + ". Such a pump stands beside the water: its suction pipe and its level are not in"
            + " these figures."
        : "Submersible, while "
            + other.present()
            + " in the file is external: "
            + shown
            + ". Such a pump stands in the water and has no suction pipe.";
  }

  /**
   * Whether another that meets the targets draws less than one far from its best efficiency; empty
   * if the sheet of that one gives no power.
   */
  static Optional<String> drawingLess(RatedTrial best, List<RatedTrial> does, ShownUnits units) {
    if (best.trial().inUse().powerW().isEmpty()) {
      return Optional.empty();
    }
    double watts = best.trial().inUse().powerW().getAsDouble();
    return does.stream()
        .filter(rated -> rated.trial().inUse().powerW().orElse(watts) < SAVING * watts)
        .findFirst()
        .map(
            rated ->
                SetupWords.of(rated.trial().setup(), units)
                    + " draws less: "
                    + units.power(rated.trial().inUse().powerW().orElseThrow())
                    + ".")
        .or(() -> Optional.of("No other pump that meets the target draws noticeably less."));
  }

  /** What to say where the targets cannot be drawn or carried. */
  static String outOfReach(PumpsAnswer answer) {
    ShownUnits units = Shown.of(answer);
    double greatest = answer.duty().duty().greatestFlowM3PerS().orElse(0.0);
    return "The targets are out of reach of any pump here: no more than "
        + units.flow(greatest)
        + ". Look at what the skimmer passes at this level of the pond, at the intake's level, and"
        + " at shut valves.";
  }

  static void print(PumpsAnswer answer, List<RatedTrial> does, PageBuilder page) {
    CostNotes notes = new CostNotes(page, Shown.of(answer), answer.currency());
    if (!does.isEmpty()) {
      notes.electricity(
          answer.terms(),
          "energy",
          " and the pump, as far as it has a price; pipe and service are not counted.");
      SiteCautions.printFilling(answer.job(), page);
      notes.otherCurrencies(answer.otherCurrencies());
      page.paragraph(
          "\"Of range\" is the flow against the greatest flow of the data sheet, \"of best\" that"
              + " against the flow of the best efficiency; 70 to 120 % of best is recommended"
              + " (common"
              + " practice).");
    }
    notes.notTried(answer.faults(), answer.choice().leftOut());
    if (answer.choice().ranked().stream().anyMatch(it -> it.trial().setup().count() > 1)) {
      page.paragraph(SiteCautions.SEVERAL_PUMPS);
    }
    if (!does.isEmpty()) {
      SiteCautions.print(true, page);
    }
  }
}
