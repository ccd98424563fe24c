package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/** Pipes in which the water runs faster than common practice has it. */
final class VelocityDetector implements Detector {
  /** Fastest on the suction side, m/s: 4 ft/s; common practice, no source. */
  private static final double SUCTION_M_PER_S = 1.2192;

  /** Fastest on the discharge side, m/s: 5 ft/s; common practice, no source. */
  private static final double DISCHARGE_M_PER_S = 1.524;

  /** Water too fast in a pipe. */
  record FastPipe(String at, String pipe, double velocityMPerS, double limitMPerS, boolean suction)
      implements Finding {
    @Override
    public String code() {
      return suction ? "fast-suction" : "fast-discharge";
    }

    @Override
    public String message(Wording wording) {
      return "Water runs at "
          + wording.velocity(velocityMPerS)
          + " through the "
          + pipe
          + " of \""
          + at
          + "\"; common practice is up to "
          + wording.velocity(limitMPerS)
          + (suction ? " before a pump." : " after a pump.")
          + (suction
              ? " Fast suction pulls air out of the water and noise out of the pump; take the next size up."
              : " Friction grows almost with the square of it; compare the next size up before the trench is closed.");
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    Set<PointName> drawnFrom =
        state.lines().stream()
            .map(LineState::line)
            .filter(line -> pumpIndex(line) >= 0)
            .map(Line::from)
            .collect(Collectors.toSet());
    List<Finding> findings = new ArrayList<>();
    for (LineState state1 : state.lines()) {
      Line line = state1.line();
      int pump = pumpIndex(line);
      boolean feedsPump = pump < 0 && drawnFrom.contains(line.to());
      int suctionEnd = feedsPump ? line.parts().size() : Math.max(0, pump);
      report(state1, line.parts().subList(0, suctionEnd), true, findings);
      report(state1, line.parts().subList(suctionEnd, line.parts().size()), false, findings);
    }
    return findings;
  }

  private static int pumpIndex(Line line) {
    for (int i = 0; i < line.parts().size(); i++) {
      Part part = line.parts().get(i);
      if (part instanceof Pump || part instanceof PlannedPump) {
        return i;
      }
    }
    return -1;
  }

  /** Reports the fastest of the runs if it is too fast. */
  private static void report(
      LineState line, List<Part> parts, boolean suction, List<Finding> findings) {
    double limit = suction ? SUCTION_M_PER_S : DISCHARGE_M_PER_S;
    double fastest = limit;
    String pipe = "";
    for (Part part : parts) {
      if (part instanceof Run run) {
        double velocity = Math.abs(run.inside().velocityAt(line.flowM3PerS()));
        if (velocity > fastest) {
          fastest = velocity;
          pipe = run.label();
        }
      }
    }
    if (fastest > limit) {
      findings.add(new FastPipe(line.line().name().value(), pipe, fastest, limit, suction));
    }
  }
}
