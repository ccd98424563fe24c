package rillwright.cli.study;

import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;

/** What the data sheets of the pumps in lines show: one finding a line and kind. */
public final class SheetFindings {
  private SheetFindings() {}

  /** Those of a project. */
  public static List<Finding> of(Project project) {
    return project.network().placed(Pump.class).stream()
        .flatMap(placed -> of(placed, project.sheets().get(placed.part().model()).facts()))
        .toList();
  }

  private static Stream<Finding> of(Placed<Pump> placed, SheetFacts facts) {
    String at = placed.line().name().value();
    String model = "\"" + placed.part().model() + "\"";
    if (facts.isInvented()) {
      return Stream.of(
          Finding.of(Severity.ADVICE, "invented-curve", at, "The curve of " + model)
              .then(" is invented, and with it what flows, the watts and the cost; put a data")
              .then(" sheet in its place before a pump is bought."));
    }
    return facts.isSubmersible() && isFedByAPump(placed)
        ? Stream.of(
            Finding.of(Severity.PROBLEM, "submersible-in-series", at, model)
                .then(" in \"" + at + "\" is submersible and stands in series. It draws from the")
                .then(" water that it stands in, so no pump can feed it: take one with more")
                .then(" head, or external ones whose maker allows series."))
        : Stream.empty();
  }

  /** Whether it is one of several in series, or another stands upstream in its line. */
  private static boolean isFedByAPump(Placed<Pump> placed) {
    boolean isOneOfSeries =
        placed.part().set().count() > 1 && placed.part().set().arrangement() == Arrangement.SERIES;
    return isOneOfSeries
        || placed.line().placed(Pump.class).stream().anyMatch(it -> it.index() < placed.index());
  }
}
