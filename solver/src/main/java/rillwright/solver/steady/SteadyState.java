package rillwright.solver.steady;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** The steady state of a network: what flows where at what head, the effort and the errors. */
public final class SteadyState {
  private final Network network;
  private final Description description;
  private final Map<PointName, PointState> points = new ConcurrentHashMap<>();
  private final Map<LineName, LineState> lines = new ConcurrentHashMap<>();
  private final int iterations;
  private final double flowErrorM3PerS;
  private final double headErrorM;

  /**
   * A state of a network.
   *
   * @param description tells of points and lines when they are asked for: of most states that are
   *     found on the way to another only a few are
   */
  SteadyState(
      Network network,
      Description description,
      int iterations,
      double flowErrorM3PerS,
      double headErrorM) {
    this.network = network;
    this.description = description;
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
    return network.points().stream().map(this::of).toList();
  }

  /** All lines, in the order of the network. */
  public List<LineState> lines() {
    return network.lines().stream().map(this::of).toList();
  }

  /** A point's state; throws if there is none of the name. */
  public PointState point(PointName name) {
    return of(network.point(name));
  }

  /** A line's state; throws if there is none of the name. */
  public LineState line(LineName name) {
    return of(network.line(name));
  }

  /**
   * The same flows and levels with another part in a place: of a pump that was balanced by its flow
   * alone, what it does to the water beside it. Nothing is balanced anew, so the head that it gives
   * beyond what is needed is still in the water downstream of it.
   */
  public SteadyState withPart(LineName line, int index, Part part) {
    return new SteadyState(
        network.withPart(line, index, part), description, iterations, flowErrorM3PerS, headErrorM);
  }

  private PointState of(Point point) {
    return points.computeIfAbsent(point.name(), name -> description.of(point));
  }

  private LineState of(Line line) {
    return lines.computeIfAbsent(line.name(), name -> description.of(line));
  }

  /** What happens at a part of its network. */
  public PartState part(Placed<?> place) {
    return line(place.line().name()).parts().get(place.index());
  }

  /** Its flows, for a balance that is like it. */
  Model.Near near() {
    return new Model.Near(
        line ->
            network
                .findLine(line)
                .map(known -> OptionalDouble.of(description.flowM3PerS(known)))
                .orElseGet(OptionalDouble::empty),
        point ->
            network
                .findPoint(point)
                .map(known -> OptionalDouble.of(description.outflowM3PerS(known)))
                .orElseGet(OptionalDouble::empty),
        Optional.of(description.edges()));
  }

  /**
   * By how much less flows along a line for each metre of head that it takes more, m²/s: the slope
   * where the state stands, all else following. Empty where a chamber is starved or water falls
   * beside air, since what comes in there follows by a search.
   */
  public Optional<ToDoubleFunction<LineName>> flowByHead() {
    return description.flowByHead();
  }

  /** Whether some chamber is drawn down to its intake. */
  public boolean starves() {
    return points().stream().anyMatch(PointState::isStarved);
  }

  /** Whether a fall or outlet gets less than its target. */
  public boolean missesATarget() {
    return points().stream().anyMatch(PointState::isUnderTarget);
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
