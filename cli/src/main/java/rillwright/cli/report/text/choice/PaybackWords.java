package rillwright.cli.report.text.choice;

import static java.util.stream.Collectors.toList;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.curves.wording.Listing;
import rillwright.solver.study.pipechoice.Payback;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.PumpSetup;

/** When a dearer pipe has paid for itself, in words. */
final class PaybackWords {
  /** Years that pipe in a trench may lie; what is not paid back then never is. */
  private static final double LONGEST_YEARS = 50;

  private final PipesAnswer answer;
  private final SizeWords sizes;
  private final ShownUnits units;
  private final Optional<RatedPipe> cheapest;

  PaybackWords(PipesAnswer answer, SizeWords sizes) {
    this.answer = answer;
    this.sizes = sizes;
    this.units = Shown.of(answer);
    this.cheapest = answer.choice().cheapestPipe();
  }

  /** A few words against the cheapest pipe that gives the falls their targets. */
  String cell(RatedPipe rated) {
    if (!rated.meetsTargets() || cheapest.isEmpty()) {
      return "not compared";
    }
    if (cheapest.get().equals(rated)) {
      boolean allPriced =
          answer.choice().ranked().stream()
              .noneMatch(other -> other.meetsTargets() && other.option().materialCost().isEmpty());
      return allPriced ? "cheapest pipe" : "cheapest known";
    }
    Payback payback = Payback.of(cheapest.get(), rated, answer.terms());
    return switch (payback.kind()) {
      case PAID_BACK -> isTooLate(payback) ? "never" : "in year " + year(payback);
      case AT_ONCE -> "costs no more to buy";
      case NEVER -> "never";
      case SAME_PUMP -> "saves nothing: same pump";
      case UNKNOWN -> "not known";
    };
  }

  /**
   * Why sizes with one and the same pump are ranked as they are.
   *
   * @param priced whether their pipe has a price
   */
  void samePump(PageBuilder page, boolean priced) {
    String same =
        (answer.pumpsFree() ? "All that meet the target" : "All sizes")
            + " run the same pump, so a larger pipe adds flow and saves nothing. Their watts differ"
            + " only by what they carry: throttled to the target all that meet it draw the same."
            + " So they are ranked by "
            + (priced ? "the cost of the pipe." : "size, the narrower first.");
    String own = " To see what a larger pipe saves, let each size have its own pump: ";
    if (answer.pumpsFree()) {
      page.paragraph(same);
    } else {
      page.paragraph(same + own + "--from FOLDER.", same + own + "ask again with data sheets.");
    }
  }

  /**
   * Which sizes that run one and the same pump are throttled and which are not, so that their costs
   * differ by that; one sentence a pump.
   */
  List<String> sharedPumps(List<RatedPipe> rows) {
    return rows.stream()
        .filter(RatedPipe::meetsTargets)
        .collect(
            Collectors.groupingBy(it -> it.pump().trial().setup(), LinkedHashMap::new, toList()))
        .entrySet()
        .stream()
        .filter(
            group -> group.getValue().stream().map(RatedPipe::isThrottled).distinct().count() > 1)
        .map(group -> shared(group.getKey(), group.getValue()))
        .toList();
  }

  private String shared(PumpSetup pump, List<RatedPipe> rows) {
    Map<Boolean, List<String>> byThrottled =
        rows.stream()
            .collect(
                Collectors.partitioningBy(
                    RatedPipe::isThrottled,
                    Collectors.mapping(it -> sizes.cell(it.option()), toList())));
    return "With "
        + SetupWords.of(pump, units)
        + " the cost of "
        + Listing.of(byThrottled.get(true))
        + " is of running throttled, that of "
        + Listing.of(byThrottled.get(false))
        + " of running with the valves as they stand: compare these sizes by the cost of the pipe.";
  }

  /** What the cells mean; empty where no pipe has a price. */
  String legend() {
    return cheapest
        .map(
            pipe ->
                " \"Paid back\": when the electricity saved has paid what pipe and pump cost"
                    + " more than"
                    + " those of "
                    + sizes.phrase(pipe.option())
                    + ", the cheapest pipe that meets every target.")
        .orElse("");
  }

  /** A sentence on a dearer pipe against a cheaper one. */
  String sentence(RatedPipe cheaper, RatedPipe dearer) {
    Payback payback = Payback.of(cheaper, dearer, answer.terms());
    return switch (payback.kind()) {
      case PAID_BACK ->
          isTooLate(payback)
              ? "Against the cheaper one it does not pay back in "
                  + units.number(mostYears())
                  + " years."
              : "Against the cheaper one it pays back in year " + year(payback) + ".";
      case AT_ONCE -> "It costs no more to buy.";
      case NEVER -> "Against the cheaper one it never pays back.";
      case SAME_PUMP ->
          "With the same pump a larger pipe adds flow and saves nothing: it never pays back.";
      case UNKNOWN ->
          dearer.meetsTargets()
              ? "Payback needs prices and pump power."
              : "It does not meet every target.";
    };
  }

  private double mostYears() {
    return Math.max(LONGEST_YEARS, answer.terms().years());
  }

  private boolean isTooLate(Payback payback) {
    return payback.years().orElseThrow() > mostYears();
  }

  private static String year(Payback payback) {
    long year = Math.max(1, (long) Math.ceil(payback.years().orElseThrow()));
    return String.format(Locale.ROOT, "%,d", year);
  }
}
