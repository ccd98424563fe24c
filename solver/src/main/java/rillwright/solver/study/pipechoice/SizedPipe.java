package rillwright.solver.study.pipechoice;

import java.util.List;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.LineName;
import rillwright.solver.steady.SteadyState;

/** Sizes of pipe in a balanced network. */
public interface SizedPipe {
  /** Which sizes. */
  PipeOption option();

  /** What flows where with them, the valves as they stand. */
  SteadyState state();

  /** What flows where day by day: throttled, if it meets the targets so. */
  default SteadyState stateInUse() {
    return state();
  }

  /** What the crew should know, the valves as they stand. */
  List<Finding> findings();

  /** Whether every fall gets its target. */
  boolean meetsTargets();

  /** What the size of a line means for the water in it. */
  default LineFigures figures(LineName line) {
    return LineFigures.of(state().line(line));
  }

  /** The same day by day. */
  default LineFigures figuresInUse(LineName line) {
    return LineFigures.of(stateInUse().line(line));
  }

  /** Water in the runs of all lines that were varied, m³. */
  default double holdUpM3() {
    return option().sizes().keySet().stream().mapToDouble(line -> figures(line).holdUpM3()).sum();
  }
}
