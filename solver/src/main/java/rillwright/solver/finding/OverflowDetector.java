package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.law.filter.OpenTopLaw;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Filter;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Chambers, open filters and basins that run over. */
final class OverflowDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      if (point.point() instanceof Chamber chamber && ChamberDetector.runsOver(point)) {
        double above = point.headM().getAsDouble() - chamber.topM().getAsDouble();
        findings.add(runsOver(name, above, "its top"));
      }
      if (point.point() instanceof Basin basin
          && basin.levelM() > basin.overflowM().orElse(Double.POSITIVE_INFINITY)) {
        double above = basin.levelM() - basin.overflowM().getAsDouble();
        findings.add(runsOver(name, above, "its overflow"));
      }
    }
    for (LineState line : state.lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Filter filter) {
          filter
              .openTopLaw()
              .filter(law -> law.runsOverAt(part.flowM3PerS()))
              .ifPresent(
                  law ->
                      findings.add(
                          filterRunsOver(line.line().name().value(), law, part.flowM3PerS())));
        }
      }
    }
    return findings;
  }

  /** Water above the rim of a chamber or basin. */
  private static Finding runsOver(String at, double aboveM, String rim) {
    return Finding.of(Severity.PROBLEM, "runs-over", at, "Water in \"" + at + "\" stands ")
        .depth("aboveRim", aboveM)
        .then(
            " above "
                + rim
                + " and runs over. Open or clean what carries it away, lower the level or raise the"
                + " rim.");
  }

  /** An open filter whose mats do not pass all the flow. */
  private static Finding filterRunsOver(String at, OpenTopLaw law, double flowM3PerS) {
    double passed = law.passedAt(flowM3PerS);
    return Finding.of(
            Severity.PROBLEM,
            "filter-runs-over",
            at,
            "The open filter in \"" + at + "\" runs over: at its ")
        .depth("openTop", law.topM())
        .then(" its mats pass ")
        .flow("passed", passed)
        .then("; the other ")
        .flow("over", Math.abs(flowM3PerS) - passed)
        .then(" go over them uncleaned. Clean it; switch off and unplug before reaching in.");
  }
}
