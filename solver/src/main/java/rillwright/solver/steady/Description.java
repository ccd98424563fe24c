package rillwright.solver.steady;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.solver.balance.Slopes;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;

/** A balance in the words of the network. */
final class Description {
  private final Network network;
  private final NetworkGraph graph;
  private final Imposed imposed;
  private final Solved solved;
  private final Map<PointName, Starved> starved;
  private final DrawnLevels drawn;
  private final Map<LineName, Course> courses;

  Description(
      NetworkGraph graph,
      RunningNetwork running,
      Imposed imposed,
      Solved solved,
      Map<PointName, Starved> starved,
      Map<LineName, Course> courses) {
    this.network = graph.network();
    this.graph = graph;
    this.imposed = imposed;
    this.solved = solved;
    this.starved = starved;
    this.drawn = new DrawnLevels(running, solved, starved);
    this.courses = courses;
  }

  /**
   * By how much less flows along a line for each metre that it takes more, m²/s; empty where what
   * comes into starved chambers or falls beside air follows too, or a flow is imposed.
   */
  Optional<ToDoubleFunction<LineName>> flowByHead() {
    boolean follows =
        courses.values().stream().anyMatch(Course.Vented.class::isInstance) || !starved.isEmpty();
    if (follows || !imposed.equals(Imposed.NOTHING)) {
      return Optional.empty();
    }
    Slopes slopes = new Slopes(solved.problem(), solved.balance());
    return Optional.of(line -> slopes.flowByHead(solved.linksOf().get(line).get(0)));
  }

  /** The edges of the balance. */
  EdgePattern edges() {
    return solved.balance().edges();
  }

  PointState of(Point point) {
    if (starved.containsKey(point.name())) {
      double intake = starved.get(point.name()).intakeM();
      double missing = intake - drawn.levelM(point.name());
      return new PointState(point, OptionalDouble.of(intake), OptionalDouble.of(missing), 0);
    }
    return new PointState(
        point, solved.headM(point.name()), OptionalDouble.empty(), outflowM3PerS(point));
  }

  /** What leaves the network at a point, m³/s. */
  double outflowM3PerS(Point point) {
    if (imposed.outflowM3PerS().containsKey(point.name())) {
      return imposed.outflowM3PerS().get(point.name());
    }
    if (solved.spillOf().containsKey(point.name())) {
      return solved.balance().flowM3PerS(solved.spillOf().get(point.name()));
    }
    if (point.heldHeadM().isEmpty()) {
      return point.drawM3PerS();
    }
    double sum = 0;
    for (Line line : graph.linesAt(point.name())) {
      double flow = flowM3PerS(line);
      sum += line.to().equals(point.name()) ? flow : -flow;
    }
    return sum;
  }

  /** What flows in a line, m³/s. */
  double flowM3PerS(Line line) {
    Double given = imposed.lineFlowM3PerS().get(line.name());
    return given != null ? given : solved.flowM3PerS(line.name());
  }

  LineState of(Line line) {
    double flow = flowM3PerS(line);
    OptionalDouble headFrom = headAtEnd(line, line.from());
    OptionalDouble headTo = headAtEnd(line, line.to());
    OptionalDouble loss =
        headFrom.isPresent() && headTo.isPresent()
            ? OptionalDouble.of(headFrom.getAsDouble() - headTo.getAsDouble())
            : OptionalDouble.empty();
    Course course = courses.getOrDefault(line.name(), new Course.Full());
    PartHeads parts = new PartHeads(network, line, course, flow, headFrom, headTo);
    HeadLaw law = network.lawOf(line);
    boolean letsWaterBothWays = law.leastFlow() < 0 && law.greatestFlow() > 0;
    boolean open = flow != 0 || (letsWaterBothWays && !(course instanceof Course.NotStarted));
    return new LineState(
        line,
        flow,
        loss,
        course,
        open,
        parts.entranceLossM(),
        open ? parts.running() : parts.atRest(),
        parts.exitLossM());
  }

  /** The head that a line sees at one of its ends. */
  private OptionalDouble headAtEnd(Line line, PointName end) {
    Starved chamber = starved.get(end);
    boolean draws =
        chamber == null || (line.from().equals(end) ? flowM3PerS(line) > 0 : flowM3PerS(line) < 0);
    return draws ? solved.headM(end) : OptionalDouble.of(chamber.intakeM());
  }
}
