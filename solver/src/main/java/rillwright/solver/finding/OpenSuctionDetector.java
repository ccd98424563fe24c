package rillwright.solver.finding;

import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Line;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.SteadyState;

/** Pipes that suck from a basin without a skimmer. */
final class OpenSuctionDetector implements Detector {

  /** An open suction in a basin. */
  record OpenSuction(String at, String basin, double flowM3PerS) implements Finding {
    @Override
    public String code() {
      return "open-suction";
    }

    @Override
    public String message(Wording wording) {
      return "\""
          + at
          + "\" draws "
          + wording.flow(flowM3PerS)
          + " straight out of \""
          + basin
          + "\". Never leave an open suction where a person or child can reach it: use two intakes apart, or a large"
          + " guarded one, as local code asks, and switch off before anyone enters the water.";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    return state.lines().stream()
        .filter(line -> line.flowM3PerS() > 0 && opensIntoBasin(state, line.line()))
        .<Finding>map(
            line ->
                new OpenSuction(
                    line.line().name().value(), line.line().from().value(), line.flowM3PerS()))
        .toList();
  }

  private static boolean opensIntoBasin(SteadyState state, Line line) {
    return state.network().point(line.from()) instanceof Basin
        && line.parts().stream().noneMatch(Skimmer.class::isInstance);
  }
}
