package rillwright.cli.report.text.mend;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.Caution;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.stream.Freeboard;

/** What to keep in mind before something is changed. */
final class MendCautions {
  private static final String LASTS =
      "How long a pond lasts without topping up is shown as its room and counts as no need";

  private static final double ROUND_M = 0.005;

  private final MendAnswer answer;
  private final ShownUnits units;
  private final PageBuilder page;

  MendCautions(MendAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.page = page;
  }

  void print() {
    Set<Work> works =
        answer.remedies().stream().map(it -> it.candidate().work()).collect(Collectors.toSet());
    if (answer.needs().stream().anyMatch(Need::isOfPond)) {
      page.paragraph(ponds());
      page.paragraph(LASTS + " unless \"--days\" asks for it.", LASTS + ".");
    }
    if (answer.remedies().stream()
        .flatMap(it -> it.leaves().stream())
        .anyMatch(need -> need.code().equals("skimmer-at-its-limit"))) {
      page.paragraph(
          "A skimmer only just passes the flow where the water stands less than 0.1 mm (0.004 in)"
              + " above the level at which it passes no more than what runs: any further drop takes"
              + " flow.");
    }
    if (answer.needs().stream().anyMatch(Need::runsOverAtStop)) {
      page.paragraph(
          "A pond runs over at a stop only where it is topped up while the pump runs. Topping it up"
              + " with the pump off costs nothing, if its pump stays supplied until then.");
    }
    if (answer.state().network().isPumped()) {
      page.marked("- ", SiteCautions.WIRING);
    }
    if (answer.remedies().stream().anyMatch(MendCautions::takesSeveralPumps)) {
      page.marked("- ", SiteCautions.SEVERAL_PUMPS);
    }
    if (answer.needs().stream().anyMatch(need -> PondNeeds.isOfStarving(need.code()))) {
      page.marked(
          "- ",
          "An automatic fill through an air gap keeps a pond at its level. It is not counted here:"
              + " it hides a leak, and feeds what runs over at each stop.");
    }
    caution(Caution.SUCTION, works, Work.PUMP, Work.SKIMMER);
    caution(Caution.OPEN_WATER, works, Work.LEVEL, Work.SKIMMER, Work.OVERFLOW, Work.POND);
    caution(Caution.UPHILL, works, Work.LEVEL, Work.OVERFLOW, Work.POND);
    if (works.stream().anyMatch(Work::digs)) {
      page.marked("- ", SiteCautions.DIGGING);
    }
  }

  private static boolean takesSeveralPumps(Remedy remedy) {
    return remedy.candidate().steps().stream()
        .anyMatch(
            step ->
                step.action() == Action.MORE_PARALLEL || step.action() == Action.MORE_IN_SERIES);
  }

  /** How far ponds are changed. */
  private String ponds() {
    return "A pond is made twice as large at most. Its water is kept "
        + usual(Freeboard.BELOW_GRADE_M)
        + " below grade and "
        + usual(Freeboard.BELOW_MOUTH_TOP_M)
        + " below the top of a skimmer's mouth, its overflow "
        + usual(Freeboard.OVERFLOW_BELOW_EDGE_M)
        + " below grade or the liner's edge (common practice, no source). A change counts only"
        + " if the"
        + " falls get their targets with the levels at rest, as they stand before the stream has"
        + " filled and as all flows here are, and with those while running.";
  }

  /** A depth of common practice, in a round figure of either system: "3 in", "75 mm". */
  private String usual(double depthM) {
    return units.depth(ROUND_M * Math.rint(depthM / ROUND_M));
  }

  private void caution(Caution caution, Set<Work> works, Work... where) {
    if (Stream.of(where).anyMatch(works::contains)) {
      page.marked("- ", caution.sentence(answer.state().network().isPumped()));
    }
  }
}
