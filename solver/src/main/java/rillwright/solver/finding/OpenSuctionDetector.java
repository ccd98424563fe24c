package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/** Pipes that suck from open water without a skimmer. */
final class OpenSuctionDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      PointName from = line.flowM3PerS() < 0 ? line.line().to() : line.line().from();
      boolean skimmer = line.line().has(Skimmer.class);
      if (line.flowM3PerS() != 0
          && !skimmer
          && state.network().point(from) instanceof Basin basin
          && !basin.fullOfStone()) {
        findings.add(
            openSuction(
                line.line().name().value(),
                from.value(),
                Math.abs(line.flowM3PerS()),
                state.network().isPumped() ? "switch off" : "shut it off"));
      }
    }
    return findings;
  }

  /**
   * An open suction in a basin.
   *
   * @param first what to do before somebody enters
   */
  private static Finding openSuction(String at, String basin, double flowM3PerS, String first) {
    return Finding.of(Severity.DANGER, "open-suction", at, "\"" + at + "\" draws ")
        .flow("flow", flowM3PerS)
        .then(
            " straight out of \""
                + basin
                + "\". Never leave an open suction where a person or child can reach it: use two"
                + " intakes apart, or a large guarded one, as local code asks, and "
                + first
                + " before anyone enters the water.");
  }
}
