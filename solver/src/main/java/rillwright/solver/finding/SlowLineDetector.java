package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/** Pipes that run by gravity and too slowly to carry what the water brings along. */
final class SlowLineDetector implements Detector {

  /** Slowest that keeps a gravity pipe clean, m/s; common practice, no source. */
  private static final double LEAST_M_PER_S = 0.2;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      if (line.flowM3PerS() != 0 && runsByGravity(state, line)) {
        slowestRun(line)
            .filter(run -> velocity(line, run) < LEAST_M_PER_S)
            .ifPresent(
                run ->
                    findings.add(
                        slow(line.line().name().value(), run.label(), velocity(line, run))));
      }
    }
    return findings;
  }

  /** From open water, or from anywhere where nothing is pumped. */
  private static boolean runsByGravity(SteadyState state, LineState lineState) {
    Line line = lineState.line();
    Point source = state.network().point(lineState.flowM3PerS() > 0 ? line.from() : line.to());
    boolean openWater = source instanceof Basin || source instanceof Chamber;
    return !line.has(Pump.class)
        && !line.has(PlannedPump.class)
        && (openWater || !state.network().isPumped());
  }

  private static Optional<Run> slowestRun(LineState line) {
    return line.line().parts().stream()
        .filter(Run.class::isInstance)
        .map(Run.class::cast)
        .min(Comparator.comparingDouble(run -> velocity(line, run)));
  }

  private static double velocity(LineState line, Run run) {
    return Math.abs(run.inside().velocityAt(line.flowM3PerS()));
  }

  private static Finding slow(String at, String pipe, double velocityMPerS) {
    return Finding.of(Severity.ADVICE, "slow-gravity-line", at, "Water moves at only ")
        .velocity("velocity", velocityMPerS)
        .then(" through the " + pipe + " of \"" + at + "\"; below ")
        .velocity("usualLeastVelocity", LEAST_M_PER_S)
        .then(
            " a gravity pipe silts up (common practice). Take a narrower pipe where the fall"
                + " allows, or plan to flush it.");
  }
}
