package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Chambers that the pump draws down to its intake. */
final class ChamberDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      if (point.isStarved()) {
        String name = point.point().name().value();
        double inflow = 0;
        boolean skimmer = false;
        boolean net = false;
        for (LineState line : state.lines()) {
          double into = flowInto(point, line);
          inflow += Math.max(0, into);
          skimmer |= into > 0 && line.line().has(Skimmer.class);
          net |= into > 0 && (line.line().has(Filter.class) || line.line().has(Loss.class));
        }
        findings.add(starvedChamber(name, inflow, skimmer, net));
      }
    }
    return findings;
  }

  private static double flowInto(PointState point, LineState line) {
    if (line.line().to().equals(point.point().name())) {
      return line.flowM3PerS();
    }
    return line.line().from().equals(point.point().name()) ? -line.flowM3PerS() : 0;
  }

  /** Whether a point is a chamber that runs over. */
  static boolean runsOver(PointState state) {
    return state.point() instanceof Chamber chamber
        && state.headM().isPresent()
        && state.headM().getAsDouble() > chamber.topM().orElse(Double.POSITIVE_INFINITY);
  }

  /** A chamber that has fallen to the pump's intake. */
  private static Finding starvedChamber(
      String at, double inflowM3PerS, boolean skimmer, boolean net) {
    return Finding.of(
            Severity.PROBLEM,
            "starved-chamber",
            at,
            "The pump draws \"" + at + "\" down to its intake and draws air. ")
        .then(skimmer ? "The skimmer passes no more than " : "What feeds it passes no more than ")
        .flow("inflow", inflowM3PerS)
        .then(" at that level. ")
        .then(
            skimmer
                ? "Clean the mouth"
                    + (net ? " and the net" : "")
                    + ", raise the pond, widen or lower the sill, or take a smaller pump."
                : "Clean its way, take a larger pipe there, or a smaller pump.")
        .then(" Switch off and unplug before reaching in.");
  }
}
