package rillwright.solver.steady;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;

/** The steady state of a network: what flows where at what head, the effort and the errors. */
public final class SteadyState {
  private final Network network;
  private final Map<PointName, PointState> points = new LinkedHashMap<>();
  private final Map<LineName, LineState> lines = new LinkedHashMap<>();
  private final int iterations;
  private final double flowErrorM3PerS;
  private final double headErrorM;

  SteadyState(
      Network network,
      List<PointState> points,
      List<LineState> lines,
      int iterations,
      double flowErrorM3PerS,
      double headErrorM) {
    this.network = network;
    points.forEach(state -> this.points.put(state.point().name(), state));
    lines.forEach(state -> this.lines.put(state.line().name(), state));
    this.iterations = iterations;
    this.flowErrorM3PerS = flowErrorM3PerS;
    this.headErrorM = headErrorM;
  }

  /** The network. */
  public Network network() {
    return network;
  }

  /** All points, in the order of the network. */
  public List<PointState> points() {
    return List.copyOf(points.values());
  }

  /** All lines, in the order of the network. */
  public List<LineState> lines() {
    return List.copyOf(lines.values());
  }

  /** A point's state; throws if there is none of the name. */
  public PointState point(PointName name) {
    network.point(name);
    return points.get(name);
  }

  /** A line's state; throws if there is none of the name. */
  public LineState line(LineName name) {
    network.line(name);
    return lines.get(name);
  }

  /** What happens at a part of its network. */
  public PartState part(Placed<?> place) {
    return line(place.line().name()).parts().get(place.index());
  }

  /** Its flows, for a balance that is like it. */
  Model.Near near() {
    return new Model.Near(
        line ->
            lines.containsKey(line)
                ? OptionalDouble.of(lines.get(line).flowM3PerS())
                : OptionalDouble.empty(),
        point ->
            points.containsKey(point)
                ? OptionalDouble.of(points.get(point).outflowM3PerS())
                : OptionalDouble.empty());
  }

  /** Whether some chamber is drawn down to its intake. */
  public boolean starves() {
    return points.values().stream().anyMatch(PointState::isStarved);
  }

  /** Whether a fall or outlet gets less than its target. */
  public boolean missesATarget() {
    return points.values().stream().anyMatch(PointState::isUnderTarget);
  }

  /** Whether it does not do what it should: a target is missed or a chamber starves. */
  public boolean fallsShort() {
    return missesATarget() || starves();
  }

  /** Number of Newton steps. */
  public int iterations() {
    return iterations;
  }

  /** Largest surplus or lack of flow at any point, m³/s, recomputed from the answer. */
  public double flowErrorM3PerS() {
    return flowErrorM3PerS;
  }

  /** Largest error of any line's or fall's head, m, recomputed from the laws. */
  public double headErrorM() {
    return headErrorM;
  }
}
