package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Filter;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Chambers, open filters and basins that run over. */
final class OverflowDetector implements Detector {

  /** Water above the rim of a chamber or basin. */
  record RunsOver(String at, double aboveM, String rim) implements Finding {
    @Override
    public String code() {
      return "runs-over";
    }

    @Override
    public String message(Wording wording) {
      return "Water in \""
          + at
          + "\" stands "
          + wording.depth(aboveM)
          + " above "
          + rim
          + " and runs over. Open or clean what carries it away, lower the level or raise the rim.";
    }
  }

  /** An open filter whose loss is more than its height. */
  record FilterRunsOver(String at, double lossM, double openTopM) implements Finding {
    @Override
    public String code() {
      return "filter-runs-over";
    }

    @Override
    public String message(Wording wording) {
      return "The open filter in \""
          + at
          + "\" takes "
          + wording.depth(lossM)
          + ", more than the "
          + wording.depth(openTopM)
          + " at which it runs over: water goes past it uncleaned. Clean it.";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      if (point.point() instanceof Chamber chamber && ChamberDetector.runsOver(point)) {
        double above = point.headM().getAsDouble() - chamber.topM().getAsDouble();
        findings.add(new RunsOver(name, above, "its top"));
      }
      if (point.point() instanceof Basin basin
          && basin.levelM() > basin.overflowM().orElse(Double.POSITIVE_INFINITY)) {
        double above = basin.levelM() - basin.overflowM().getAsDouble();
        findings.add(new RunsOver(name, above, "its overflow"));
      }
    }
    for (LineState line : state.lines()) {
      for (PartState part : line.parts()) {
        if (part.part() instanceof Filter filter && filter.openTopM().isPresent()) {
          double loss = Math.abs(part.headLossM().orElse(0));
          double top = filter.openTopM().getAsDouble();
          if (loss > top) {
            findings.add(new FilterRunsOver(line.line().name().value(), loss, top));
          }
        }
      }
    }
    return findings;
  }
}
