package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Line;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Mats downstream of a chamber that runs over once they are blocked. */
final class MatsDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      PointState start = state.point(line.line().from());
      if (line.flowM3PerS() > 0
          && hasClosedMats(line.line())
          && start.point() instanceof Chamber chamber
          && chamber.topM().isPresent()
          && start.headM().isPresent()) {
        double room = chamber.topM().getAsDouble() - start.headM().getAsDouble();
        findings.add(ifMatsBlocked(line, chamber, room));
      }
    }
    return findings;
  }

  /** Mats over which no water goes, which nothing pumps through. */
  private static boolean hasClosedMats(Line line) {
    return !line.has(Pump.class)
        && line.placed(Filter.class).stream()
            .anyMatch(filter -> filter.part().openTopM().isEmpty());
  }

  private static Finding ifMatsBlocked(LineState line, Chamber chamber, double roomM) {
    String name = chamber.name().value();
    Finding finding =
        Finding.of(
                Severity.NOTE,
                "if-mats-blocked",
                line.line().name().value(),
                "If the mats of \"" + line.line().name() + "\" are blocked, ")
            .flow("flow", line.flowM3PerS())
            .then(" run over the top of \"" + name + "\"");
    return chamber.areaM2().isEmpty() || roomM <= 0
        ? finding.then(". Check where that water would go.")
        : finding
            .then(" after ")
            .duration("timeToTop", roomM * chamber.areaM2().getAsDouble() / line.flowM3PerS())
            .then(". Check where that water would go.");
  }
}
