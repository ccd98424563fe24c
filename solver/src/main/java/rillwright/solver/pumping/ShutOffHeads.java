package rillwright.solver.pumping;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.SteadyState;

/**
 * Heads against shut valves, by the published shut-off heads of pumps and the levels that they draw
 * from.
 */
public final class ShutOffHeads {
  private final SteadyState state;

  /** Heads with the water held behind them, m, of the lines on the way of pumped water. */
  private final Map<LineName, Double> behindM = new HashMap<>();

  private ShutOffHeads(SteadyState state) {
    this.state = state;
  }

  /** Those in a steady state: its levels are drawn from, its flows say where the water runs on. */
  public static ShutOffHeads of(SteadyState state) {
    ShutOffHeads heads = new ShutOffHeads(state);
    WaterWays ways = new WaterWays(state);
    for (Line line : state.network().lines()) {
      OptionalDouble own = heads.ownM(line, line.parts().size());
      if (own.isPresent()) {
        ways.linesAfter(line.name())
            .forEach(after -> heads.behindM.merge(after, own.getAsDouble(), Math::max));
      }
    }
    return heads;
  }

  /**
   * Head before a part of a line with the water held behind it, m: by its own pumps before the
   * part, else by the strongest on the way of the water before it; empty where there is none.
   *
   * @param index of the part, from 0; the number of parts for the end of the line
   */
  public OptionalDouble headM(Line line, int index) {
    OptionalDouble own = ownM(line, index);
    Double behind = behindM.get(line.name());
    return own.isPresent() || behind == null ? own : OptionalDouble.of(behind);
  }

  /** By the pumps of the line itself before a part; empty where they make none. */
  private OptionalDouble ownM(Line line, int before) {
    double shutOff =
        line.placed(Pump.class).stream()
            .filter(pump -> pump.index() < before)
            .mapToDouble(pump -> pump.part().set().publishedShutOffHeadM())
            .sum();
    OptionalDouble level = state.point(line.from()).headM();
    return shutOff > 0 && level.isPresent()
        ? OptionalDouble.of(level.getAsDouble() + shutOff)
        : OptionalDouble.empty();
  }
}
