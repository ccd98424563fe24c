package rillwright.solver.reading;

import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Where the water of a network stands with its pumps off, its pipes still full. */
public final class WaterAtRest {
  private final SteadyState stopped;
  private final StandingWater standing;
  private final Set<LineName> runBack;

  private WaterAtRest(SteadyState stopped) {
    this.stopped = stopped;
    this.standing = new StandingWater(stopped);
    this.runBack = PumpsOff.runBack(stopped.network());
  }

  /**
   * That of a network.
   *
   * @throws rillwright.solver.steady.NoBalance if there is no such state
   */
  public static WaterAtRest of(Network running) {
    return new WaterAtRest(SteadyStateFinder.find(PumpsOff.stopped(running)));
  }

  /**
   * Head before a part of a line, m; empty where nothing holds the water, as in a pipe from which
   * it runs back through the pump.
   *
   * @param index of the part, from 0
   */
  public OptionalDouble headBeforeM(LineName line, int index) {
    return runBack.contains(line)
        ? stopped.line(line).parts().get(index).headBeforeM()
        : standing.headBefore(line, index);
  }

  /** Head at a point, m; empty where the level of no open water determines it. */
  public OptionalDouble levelM(PointName point) {
    return stopped.point(point).headM();
  }
}
