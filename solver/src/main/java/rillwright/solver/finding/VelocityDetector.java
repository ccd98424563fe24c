package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rillwright.solver.network.Basin;
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

  private static final String FRICTION =
      " Friction grows almost with the square of it; compare the next size up.";

  /** Where a pipe lies, and what that means for its speed. */
  private enum Side {
    SUCTION(
        "fast-suction",
        SUCTION_M_PER_S,
        " upstream of a pump. Fast suction draws air out of the water and makes the pump noisy;"
            + " take"
            + " the next size up."),
    DISCHARGE("fast-discharge", DISCHARGE_M_PER_S, " downstream of a pump." + FRICTION),
    GRAVITY("fast-pipe", DISCHARGE_M_PER_S, " in a pipe." + FRICTION);

    private final String code;
    private final double limitMPerS;
    private final String words;

    Side(String code, double limitMPerS, String words) {
      this.code = code;
      this.limitMPerS = limitMPerS;
      this.words = words;
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    boolean pumped = state.lines().stream().anyMatch(line -> pumpIndex(line.line()) >= 0);
    Set<PointName> drawnFrom = new HashSet<>();
    for (LineState line : state.lines()) {
      boolean openWater = state.point(line.line().from()).point() instanceof Basin;
      if (pumpIndex(line.line()) >= 0 && !openWater) {
        drawnFrom.add(line.line().from());
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (LineState lineState : state.lines()) {
      Line line = lineState.line();
      List<Part> parts = line.parts();
      int pump = pumpIndex(line);
      if (pump >= 0) {
        report(lineState, parts.subList(0, pump), Side.SUCTION, findings);
        report(lineState, parts.subList(pump, parts.size()), Side.DISCHARGE, findings);
      } else {
        PointName end = lineState.flowM3PerS() < 0 ? line.from() : line.to();
        Side beyond = pumped ? Side.DISCHARGE : Side.GRAVITY;
        report(lineState, parts, drawnFrom.contains(end) ? Side.SUCTION : beyond, findings);
      }
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
  private static void report(LineState line, List<Part> parts, Side side, List<Finding> findings) {
    double fastest = side.limitMPerS;
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
    if (!pipe.isEmpty()) {
      findings.add(fastPipe(line.line().name().value(), pipe, fastest, side));
    }
  }

  /** Water too fast in a pipe. */
  private static Finding fastPipe(String at, String pipe, double velocityMPerS, Side side) {
    return Finding.of(Severity.ADVICE, side.code, at, "Water runs at ")
        .velocity("velocity", velocityMPerS)
        .then(" through the " + pipe + " of \"" + at + "\"; common practice is up to ")
        .velocityLimit("usualGreatestVelocity", side.limitMPerS)
        .then(side.words);
  }
}
