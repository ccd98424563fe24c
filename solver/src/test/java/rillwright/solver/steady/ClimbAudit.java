package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;

/** Holds lines that do not run full against what the rules ask of them, from the laws alone. */
final class ClimbAudit {
  private ClimbAudit() {}

  /** What is wrong with a line that has not started or is vented. */
  static List<String> faults(SteadyState state, LineState line, double headTolerance) {
    List<String> faults = new ArrayList<>();
    if (line.course() instanceof Course.Vented vented) {
      if (line.flowM3PerS() != 0) {
        vented(state, line, vented, headTolerance, faults);
      }
    } else if (line.flowM3PerS() != 0 || line.open()) {
      faults.add("runs though it has not started");
    }
    return faults;
  }

  /** The head at the upstream end, less all that stands before the vent, is the vent's. */
  private static void vented(
      SteadyState state,
      LineState run,
      Course.Vented vented,
      double headTolerance,
      List<String> faults) {
    Line line = run.line();
    double flow = run.flowM3PerS();
    if (flow > 0 != vented.forward()) {
      faults.add("runs from its vent");
      return;
    }
    int vent = vented.highPoint();
    List<Part> parts = line.parts();
    List<Part> full =
        vented.forward() ? parts.subList(0, vent) : parts.subList(vent + 1, parts.size());
    List<HeadLaw> laws = state.network().lawsOf(line.withParts(full));
    int from = vented.forward() ? 0 : 1;
    double lost = 0;
    for (HeadLaw law : laws.subList(from, from + laws.size() - 1)) {
      lost += Math.signum(flow) * law.headLossAt(flow);
    }
    HighPoint point = (HighPoint) line.parts().get(vented.highPoint());
    double speed = Math.abs(flow) / point.pipeBore().orElseThrow().areaM2();
    OptionalDouble head = state.point(vented.forward() ? line.from() : line.to()).drawnHeadM();
    double error = head.orElseThrow() - lost - point.elevationM() - speed * speed / (2 * 9.80665);
    if (Math.abs(error) > headTolerance) {
      faults.add("its vent is off by " + error);
    }
    if (Math.abs(flow) > vented.fullFlowM3PerS() * (1 + 1e-6)) {
      faults.add("carries more with air than full");
    }
  }
}
