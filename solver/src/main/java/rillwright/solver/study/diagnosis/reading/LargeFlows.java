package rillwright.solver.study.diagnosis.reading;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.SteadyState;

/**
 * Where a flow too large for a bucket can plausibly be read; all figures common practice, no
 * source.
 *
 * @param state of the job as built
 */
record LargeFlows(SteadyState state) {
  /** Straight pipe of ten bores upstream of a meter and five downstream. */
  private static final double STRAIGHT_BORES = 15;

  /** Slower than this a meter shows little, m/s. */
  private static final double LEAST_SPEED_M_PER_S = 0.3;

  /** A shorter drawdown is not timed closely by hand, s. */
  private static final double LEAST_TIME_S = 4;

  /** The level must not fall further than this share of what stands over the intake. */
  private static final double OF_THE_DEPTH = 0.5;

  /** Whether a meter can be clamped on a pump's line: it runs full, long and fast enough. */
  boolean metered(Line line) {
    double flow = state.line(line.name()).flowM3PerS();
    return line.has(Pump.class)
        && line.placed(Run.class).stream()
            .map(placed -> placed.part())
            .anyMatch(
                run ->
                    run.lengthM() >= STRAIGHT_BORES * run.inside().diameterM()
                        && run.inside().velocityAt(flow) >= LEAST_SPEED_M_PER_S);
  }

  /**
   * Whether a chamber can be drawn down: its one feed has a mouth or a valve to be held shut, and
   * what stands over its intake lasts long enough.
   */
  boolean drawnDown(Chamber chamber) {
    OptionalDouble level = state.point(chamber.name()).headM();
    List<Line> feeds =
        state.network().lines().stream().filter(line -> feeds(line, chamber)).toList();
    double flow = feeds.stream().mapToDouble(this::flowM3PerS).sum();
    return feeds.size() == 1
        && (feeds.get(0).has(Skimmer.class) || feeds.get(0).has(Valve.class))
        && chamber.areaM2().isPresent()
        && level.isPresent()
        && OF_THE_DEPTH * (level.getAsDouble() - chamber.intakeM()) * chamber.areaM2().getAsDouble()
            >= LEAST_TIME_S * flow;
  }

  private boolean feeds(Line line, Chamber chamber) {
    double flow = state.line(line.name()).flowM3PerS();
    return flow > 0
        ? line.to().equals(chamber.name())
        : flow < 0 && line.from().equals(chamber.name());
  }

  private double flowM3PerS(Line line) {
    return Math.abs(state.line(line.name()).flowM3PerS());
  }
}
